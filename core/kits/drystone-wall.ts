import { finishNamed } from '../setup/finish-presets.ts';
import { toned } from '../setup/recolour.ts';
import type { FinishDraft, Kit, PartDraft } from './kit.ts';
import { between, unevenPieces } from './shared/between.ts';
import { copeStones } from './shared/cope-stones.ts';
import { faceStone } from './shared/face-stone.ts';
import { placeTogether } from './shared/frame.ts';
import { type LoftDraft, loftExtents, shifted } from './shared/loft-extents.ts';
import { tidyParts } from './shared/tidy-parts.ts';
import { pick, tonesOf } from './shared/tones.ts';

/** Each face leans in by so much a metre of height: common practice, no published source. */
const batter = 1 / 16;
const sunkMetres = 0.04;
/** From this thickness on each face has stones of its own; thinner walls are one stone thick. */
const doubleFromMetres = 0.42;
const cope = ['None', 'Upright stones', 'Flat slabs'];

interface Wall {
  readonly length: number;
  readonly thickness: number;
  /** How far one stone stands out beside another. */
  readonly standOut: number;
  readonly tones: readonly FinishDraft[];
  readonly random: () => number;
}

interface Course {
  readonly from: number;
  readonly high: number;
}

/** Courses from the foot up, larger stones low. */
const coursesOf = (random: () => number, height: number): Course[] => {
  const heights = unevenPieces(random, height, 0.11, 0.23).sort((a, b) => b - a);
  let from = 0;
  return heights.map((high) => {
    from += high;
    return { from: from - high, high };
  });
};

const thicknessAt = ({ thickness }: Wall, up: number): number => thickness - 2 * batter * up;

/** Ends of the wall are exact: the stone is moved so that it reaches the end with its outermost corner. */
const toEnd = (stone: LoftDraft, side: number, length: number, short: number): LoftDraft => {
  const { low, high } = loftExtents(stone);
  return shifted(stone, [side * (length / 2 - short) - (side < 0 ? low[0] : high[0]), 0, 0]);
};

const courseStones = (wall: Wall, { from, high }: Course, isFirst: boolean): LoftDraft[] => {
  const { length, standOut, tones, random } = wall;
  const [foot, joint] = [isFirst ? -sunkMetres : from, between(random, 0.002, 0.01)];
  const tall = from + high - foot - joint;
  const thick = thicknessAt(wall, from);
  const stone = (east: number, wide: number, through: boolean): LoftDraft =>
    faceStone(
      {
        middle: [east, foot + tall / 2],
        widthMetres: wide - between(random, 0.004, 0.016),
        heightMetres: tall * between(random, 0.93, 1),
        faceNorthMetres: -thick / 2 + (through ? 0.3 : 1) * standOut * random() ** 1.5,
        depthMetres: through ? thick - 0.3 * standOut : Math.min(between(random, 0.22, 0.38), thick * 0.5),
        bevelMetres: between(random, 0.008, 0.02),
        skewDegrees: through ? 1 : 4,
        through,
        wornShare: through ? 0.07 : 0.14,
        finish: pick(random, tones),
      },
      random,
    );
  const ends = [-1, 1].map((side) => {
    const wide = Math.min(between(random, 0.28, 0.5), length / 2);
    return { side, wide, stone: stone(side * (length / 2 - wide / 2), wide, true) };
  });
  const [west, east] = ends.map(({ wide }) => wide) as [number, number];
  const row = (through: boolean): LoftDraft[] => {
    if (length - west - east < 0.1) return [];
    let at = west - length / 2;
    return unevenPieces(random, length - west - east, 0.18, 0.48).map((wide) => {
      at += wide;
      return stone(at - wide / 2, wide, through);
    });
  };
  const double = thick >= doubleFromMetres;
  return [
    ...ends.map(({ side, stone: end }) => toEnd(end, side, length, 0.02 * random() ** 2)),
    ...row(!double),
    ...(double ? placeTogether(row(false), { turnDegrees: 180 }) : []),
  ];
};

export const drystoneWall: Kit = {
  name: 'drystone-wall',
  label: 'Drystone wall',
  says: 'A field wall of stones laid without mortar; runs from left to right.',
  fields: [
    { key: 'lengthMetres', label: 'Length', unit: 'm', min: 1, max: 20, initial: 6, step: 0.1 },
    { key: 'heightMetres', label: 'Height, cope and all', unit: 'm', min: 0.6, max: 2, initial: 1.4, step: 0.05 },
    { key: 'thicknessMetres', label: 'Thickness at the foot', unit: 'm', min: 0.35, max: 1, initial: 0.5, step: 0.05 },
    { key: 'standOutMetres', label: 'Stones stand out by', unit: 'm', min: 0, max: 0.06, initial: 0.03, step: 0.005 },
    { key: 'cope', label: 'Cope', unit: '', min: 0, max: 2, initial: 1, step: 1, choices: cope },
  ],
  make: (
    { lengthMetres = 6, heightMetres = 1.4, thicknessMetres = 0.5, standOutMetres = 0.03, cope: copeKind = 1 },
    random,
  ) => {
    const stoneFinish = finishNamed('granite');
    const wall: Wall = {
      length: lengthMetres,
      thickness: thicknessMetres,
      standOut: standOutMetres,
      tones: tonesOf(stoneFinish, 0.18),
      random,
    };
    const copeMetres = [0, 0.27, 0.1][copeKind] as number;
    const bed = heightMetres - copeMetres;
    const courses = coursesOf(random, bed);
    const stones = courses.flatMap((course, i) => courseStones(wall, course, i === 0));
    const over =
      copeMetres > 0
        ? copeStones({ ...wall, thick: thicknessAt(wall, bed), from: bed, height: heightMetres }, copeKind === 1)
        : [];
    const core: PartDraft = {
      kind: 'box',
      name: 'Filling',
      position: [0, 0, -sunkMetres],
      widthMetres: Math.max(lengthMetres - 0.24, 0.2),
      depthMetres: Math.max(thicknessAt(wall, bed) - 2 * (standOutMetres + 0.06), 0.1),
      heightMetres: bed + sunkMetres + 0.45 * copeMetres - (copeMetres > 0 ? 0 : 0.04),
      finish: toned(stoneFinish, 0.5),
    };
    return { finish: stoneFinish, parts: tidyParts([core, ...stones, ...over]) };
  },
};
