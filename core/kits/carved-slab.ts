import { finishNamed } from '../setup/finish-presets.ts';
import type { Kit, PartDraft } from './kit.ts';
import { bandOutline } from './shared/band-outline.ts';
import { between } from './shared/between.ts';
import { interlaceBands, type Panel } from './shared/interlace.ts';
import { signCount, signOutline } from './shared/runes.ts';
import { tidyParts } from './shared/tidy-parts.ts';

type Outline = [number, number][];
type Prism = Extract<PartDraft, { kind: 'prism' }>;

/** How far a layer reaches into the one under it, metres: they are one stone. */
const biteMetres = 0.001;
/** Layers of the face stand back behind the edge of the slab, so that no two faces lie in one plane. */
const edgeMetres = 0.003;

/** A cross of cells: a shaft two wide, and arms two high. */
const cross: Panel = {
  columns: 6,
  rows: 9,
  has: (column, row) =>
    column >= 0 && column < 6 && row >= 0 && row < 9 && ((column >= 2 && column < 4) || (row >= 5 && row < 7)),
};

/** Bands that turn at the edge of the cross need this much more than its cells, in cells. */
const margin = 0.17;

/** Outline of the cross, in cells from the south-west corner of the panel. */
const crossOutline = ((): Outline => {
  const [west, east, left, right] = [-margin, 6 + margin, 2 - margin, 4 + margin];
  const [foot, top, low, high] = [-margin, 9 + margin, 5 - margin, 7 + margin];
  const eastHalf: Outline = [
    [right, foot],
    [right, low],
    [east, low],
    [east, high],
    [right, high],
    [right, top],
  ];
  const westHalf: Outline = [
    [left, top],
    [left, high],
    [west, high],
    [west, low],
    [left, low],
    [left, foot],
  ];
  return [...eastHalf, ...westHalf];
})();

/** The slab seen from the front: upright sides, a low rounded head, corners a little broken. */
const slabOutline = (width: number, height: number, random: () => number): Outline => {
  const half = width / 2;
  const rise = Math.min(0.14 * width, 0.1 * height);
  const chip = () => between(random, 0, 0.008) * Math.min(width, 1);
  const chords = 16;
  const head = Array.from({ length: chords + 1 }, (_, k): [number, number] => {
    const t = 1 - (2 * k) / chords;
    return [half * t, height - rise * Math.abs(t) ** 2.4 - (k === chords / 2 ? 0 : chip())];
  });
  return [[-half, 0], [half, 0], ...head];
};

const insetOutline = (outline: Outline, width: number, height: number, by: number): Outline =>
  outline.map(([east, up]) => [east * (1 - (2 * by) / width), up === 0 ? 0 : up * (1 - by / height)]);

/** An outline seen from the front as a plate that looks south: its face lies at `faceNorth`, and it is so deep to the north. */
const plate = (name: string, outline: Outline, holes: Outline[], faceNorth: number, depth: number): Prism => ({
  kind: 'prism',
  name,
  position: [0, faceNorth + depth, 0],
  tiltDegrees: -90,
  outline,
  holes,
  heightMetres: depth,
  creaseDegrees: 20,
});

/** Signs in two lines under the cross; where and how large. */
const inscription = (
  { width, from, to }: { readonly width: number; readonly from: number; readonly to: number },
  random: () => number,
): Outline[] => {
  const lines = 2;
  const pitch = (to - from) / lines;
  const height = 0.72 * pitch;
  const stroke = Math.min(Math.max(0.085 * height, 0.004), 0.015);
  const perLine = Math.max(Math.min(Math.floor(width / (0.95 * height)), 7), 1);
  return Array.from({ length: lines * perLine }, (_, k) => {
    const middle = ((k % perLine) + 0.5) * (width / perLine) - width / 2;
    const foot = from + pitch * (lines - 1 - Math.floor(k / perLine)) + 0.14 * pitch;
    const sign = Math.floor(random() * signCount);
    return signOutline(sign, height, stroke).map(([east, up]): [number, number] => [east + middle, up + foot]);
  });
};

export const carvedSlab: Kit = {
  name: 'carved-slab',
  label: 'Carved slab',
  says: 'An upright slab with a cross of interlaced bands and two lines of cut signs in its front.',
  fields: [
    { key: 'heightMetres', label: 'Height', unit: 'm', min: 0.6, max: 4, initial: 2.2, step: 0.05 },
    { key: 'widthMetres', label: 'Width', unit: 'm', min: 0.4, max: 2.5, initial: 1.2, step: 0.05 },
    { key: 'depthMetres', label: 'Depth', unit: 'm', min: 0.08, max: 0.6, initial: 0.25, step: 0.01 },
    { key: 'grooveMetres', label: 'Grooves, deep', unit: 'm', min: 0.002, max: 0.02, initial: 0.006, step: 0.001 },
    { key: 'signMetres', label: 'Signs, deep', unit: 'm', min: 0.001, max: 0.02, initial: 0.003, step: 0.001 },
  ],
  make: (
    { heightMetres = 2.2, widthMetres = 1.2, depthMetres = 0.25, grooveMetres = 0.006, signMetres = 0.003 },
    random,
  ) => {
    const cutMetres = Math.min(signMetres, grooveMetres);
    const face = -depthMetres / 2;
    const outline = slabOutline(widthMetres, heightMetres, random);
    const inner = insetOutline(outline, widthMetres, heightMetres, edgeMetres);
    const cell = Math.min((0.8 * widthMetres) / cross.columns, (0.6 * heightMetres) / cross.rows);
    const foot = 0.88 * heightMetres - cross.rows * cell;
    const place = ([east, up]: readonly [number, number]): [number, number] => [
      (east - cross.columns / 2) * cell,
      foot + up * cell,
    ];
    const band = 0.34 * cell;
    const gap = 0.09 * cell;
    const panel = crossOutline.map(place);
    const bands = interlaceBands(cross).map((line, k) =>
      plate(
        `Band ${k + 1}`,
        bandOutline(line.map(place), band, band / 2 + gap, 0.3 * cell),
        [],
        face,
        grooveMetres + biteMetres,
      ),
    );
    const signs = inscription(
      { width: 0.78 * widthMetres, from: 0.06 * heightMetres, to: foot - 0.02 * heightMetres },
      random,
    );
    const parts = [
      plate('Slab', outline, [], face + grooveMetres, depthMetres - grooveMetres),
      ...(cutMetres < grooveMetres - 1e-6
        ? [plate('Under the signs', inner, [panel], face + cutMetres, grooveMetres - cutMetres + biteMetres)]
        : []),
      plate('Face', inner, [panel, ...signs], face, cutMetres + biteMetres),
      ...bands,
    ];
    return { finish: finishNamed('sandstone'), parts: tidyParts(parts) };
  },
};
