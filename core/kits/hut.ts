import { finishNamed } from '../setup/finish-presets.ts';
import type { FinishDraft, Kit, PartDraft } from './kit.ts';
import { chimneyParts } from './shared/chimney.ts';
import { dressings, frontOpenings, type OpeningDraft } from './shared/front-openings.ts';
import { tidyParts } from './shared/tidy-parts.ts';

type Wall = Extract<PartDraft, { kind: 'wall' }>;

/** Walls of the long sides stand back behind the gables' ends, so that no two faces lie in one plane. */
const setBackMetres = 0.0015;
/** How far walls reach into each other at the corners, and into the roof, so that no light passes. */
const biteMetres = 0.08;
const roof = { thickMetres: 0.14, overhangMetres: 0.22, sunkMetres: 0.03 };

interface Hut {
  readonly width: number;
  readonly depth: number;
  readonly eaves: number;
  readonly rise: number;
  readonly thick: number;
}

const chevron = ({ depth, eaves, rise }: Hut): [number, number][] => {
  const slope = rise / (depth / 2);
  const under = (out: number) => eaves - roof.sunkMetres + rise - slope * Math.abs(out);
  const up = roof.thickMetres * Math.hypot(1, slope);
  const out = depth / 2 + roof.overhangMetres / Math.hypot(1, slope);
  return [
    [-out, under(out)],
    [0, under(0)],
    [out, under(out)],
    [out, under(out) + up],
    [0, under(0) + up],
    [-out, under(out) + up],
  ];
};

/** Both slopes as one piece, so that the ridge is tight. A loft runs south to north; this one is turned to the east. */
const roofPart = (hut: Hut, finish: FinishDraft): PartDraft => {
  const half = hut.width / 2 + roof.overhangMetres * 0.6;
  return {
    kind: 'loft',
    name: 'Roof',
    turnDegrees: 90,
    sections: [-half, half].map((northMetres) => ({ northMetres, outline: chevron(hut) })),
    creaseDegrees: 1,
    finish,
  };
};

const wallParts = (hut: Hut, openings: readonly OpeningDraft[]): Wall[] => {
  const { width, depth, eaves, rise, thick } = hut;
  const long = (side: number): Wall => ({
    kind: 'wall',
    name: side < 0 ? 'Front wall' : 'Back wall',
    position: [0, side * (depth / 2 - setBackMetres - thick / 2), 0],
    widthMetres: width - 2 * thick + 2 * biteMetres,
    thicknessMetres: thick,
    heightMetres: eaves,
    openings: side < 0 ? [...openings] : [],
  });
  const gable = (side: number): Wall => ({
    kind: 'wall',
    name: side < 0 ? 'West gable' : 'East gable',
    position: [side * (width / 2 - thick / 2), 0, 0],
    turnDegrees: 90,
    widthMetres: depth,
    thicknessMetres: thick,
    heightMetres: eaves,
    gableMetres: rise,
  });
  return [long(-1), long(1), gable(-1), gable(1)];
};

/** At one end of the ridge: 1 = east, -1 = west. */
const chimneyOf = ({ width, eaves, rise, thick }: Hut, end: -1 | 1, finish: FinishDraft): PartDraft[] => {
  const side = Math.min(0.7, Math.max(thick + 0.15, 0.4));
  const foot = eaves + rise * 0.5;
  const top = eaves + rise + roof.thickMetres + 0.75;
  const east = end * (width / 2 - side / 2 + 0.002);
  return chimneyParts({ east, side, foot, top }, finish);
};

export const hut: Kit = {
  name: 'hut',
  label: 'Hut with gables',
  says: 'Four walls, a pitched roof and a chimney; hollow, with an open doorway and windows in the front.',
  fields: [
    { key: 'widthMetres', label: 'Width', unit: 'm', min: 3, max: 20, initial: 7, step: 0.1 },
    { key: 'depthMetres', label: 'Depth', unit: 'm', min: 2.5, max: 12, initial: 5, step: 0.1 },
    { key: 'eavesMetres', label: 'Height of the walls', unit: 'm', min: 1.6, max: 5, initial: 2.6, step: 0.1 },
    { key: 'pitchDegrees', label: 'Pitch of the roof', unit: '°', min: 15, max: 60, initial: 33, step: 1 },
    { key: 'doorWidthMetres', label: 'Doorway, width', unit: 'm', min: 0.6, max: 2.5, initial: 1, step: 0.05 },
    { key: 'doorHeightMetres', label: 'Doorway, height', unit: 'm', min: 1.2, max: 2.5, initial: 2, step: 0.05 },
    {
      key: 'windows',
      label: 'Windows',
      unit: '',
      min: 0,
      max: 2,
      initial: 1,
      step: 1,
      choices: ['None', 'One', 'Two'],
    },
    { key: 'windowWidthMetres', label: 'Window, width', unit: 'm', min: 0.3, max: 2, initial: 0.8, step: 0.05 },
    { key: 'windowHeightMetres', label: 'Window, height', unit: 'm', min: 0.3, max: 1.5, initial: 0.9, step: 0.05 },
  ],
  make: (
    {
      widthMetres = 7,
      depthMetres = 5,
      eavesMetres = 2.6,
      pitchDegrees = 33,
      doorWidthMetres = 1,
      doorHeightMetres = 2,
      windows = 1,
      windowWidthMetres = 0.8,
      windowHeightMetres = 0.9,
    },
    random,
  ) => {
    const made: Hut = {
      width: widthMetres,
      depth: depthMetres,
      eaves: eavesMetres,
      rise: (depthMetres / 2) * Math.tan((pitchDegrees * Math.PI) / 180),
      thick: Math.min(0.5, 0.12 * Math.min(widthMetres, depthMetres)),
    };
    const openings = frontOpenings(
      made,
      { wide: doorWidthMetres, high: doorHeightMetres },
      { wide: windowWidthMetres, high: windowHeightMetres, count: windows },
    );
    const stone = finishNamed('granite');
    const parts = [
      ...wallParts(made, openings),
      roofPart(made, finishNamed('slate')),
      ...dressings(-made.depth / 2, openings, stone),
      ...chimneyOf(made, Math.floor(random() * 1000) % 2 === 0 ? -1 : 1, stone),
    ];
    return { finish: finishNamed('whitewash'), parts: tidyParts(parts) };
  },
};
