import type { FinishDraft, PartDraft } from '../kit.ts';
import { archOutline, type Spot } from './arch-outline.ts';
import { between, seedFrom, unevenPieces } from './between.ts';
import { type BrokenTop, heightAt } from './broken-top.ts';
import { faceStone } from './face-stone.ts';
import { pick } from './tones.ts';

/** How far stones stand out of the walls behind them at most. */
export const standOutMetres = 0.03;
const sunkMetres = 0.1;
/** How far a wall goes on inside its neighbours. */
export const biteMetres = 0.1;

/** An opening of a wall, as seen from outside. */
export interface Hole {
  readonly across: number;
  readonly sill: number;
  readonly wide: number;
  readonly high: number;
}

/** One of the four walls, as seen from outside: it runs from its own west to its own east, its outside to its south. */
export interface RuinedWall {
  readonly name: string;
  /** Length of its face, and of the wall behind, which ends inside its neighbours where it is shorter. */
  readonly length: number;
  readonly bodyLength: number;
  /** Distance of its outside from the middle of the chapel. */
  readonly out: number;
  /** How much farther back than stones' reach its face lies, so that no two faces lie in one plane. */
  readonly setBack: number;
  readonly turnDegrees: number;
  readonly top: BrokenTop;
  /** How high the walls stand that it meets at its west and its east corner. */
  readonly cornersUp: readonly [number, number];
  readonly doors: readonly Hole[];
  readonly windows: readonly Hole[];
  /** Share of the face where stones are drawn one by one. */
  readonly stonesShare: number;
}

export interface Build {
  readonly thick: number;
  readonly tones: readonly FinishDraft[];
  readonly random: () => number;
}

/** The wall as an upright plate: doorways cut out of its foot, windows as holes, its top broken off. */
export const bodyPart = (side: RuinedWall, { thick }: Build): PartDraft => {
  const half = side.bodyLength / 2;
  const doorway = ({ across, wide, high }: Hole): Spot[] => {
    const arch = archOutline(across, wide, high, 'round');
    return [[across - wide / 2, -sunkMetres], ...arch, [across + wide / 2, -sunkMetres]];
  };
  const windowHole = ({ across, sill, wide, high }: Hole): Spot[] => {
    const arch = archOutline(across, wide, high, 'pointed').map(([e, u]): Spot => [e, u + sill]);
    return [[across - wide / 2, sill], ...arch, [across + wide / 2, sill]];
  };
  return {
    kind: 'prism',
    name: side.name,
    position: [0, thick - side.out, 0],
    tiltDegrees: -90,
    outline: [
      [-half, -sunkMetres],
      ...side.doors.flatMap(doorway),
      [half, -sunkMetres],
      ...[...side.top.spots].reverse(),
    ].map(([e, u]): [number, number] => [e, u]),
    holes: side.windows.map((hole) => windowHole(hole).map(([e, u]): [number, number] => [e, u])),
    heightMetres: thick - standOutMetres - side.setBack,
    creaseDegrees: 20,
  };
};

const isFree = ({ doors, windows }: RuinedWall, [west, east]: Spot, [low, high]: Spot): boolean =>
  [...doors, ...windows].every(
    ({ across, sill, wide, high: tall }) =>
      east < across - wide / 2 - 0.02 ||
      west > across + wide / 2 + 0.02 ||
      high < sill - 0.02 ||
      low > sill + tall + 0.02,
  );

/** Height of the wall behind a place of the face; at the ends of a wall that is the neighbour's. */
const upAt = ({ top, bodyLength, cornersUp }: RuinedWall, across: number): number => {
  if (Math.abs(across) <= bodyLength / 2 - biteMetres) return heightAt(top, across);
  return Math.min(heightAt(top, across), cornersUp[across < 0 ? 0 : 1]);
};

/** Stones that stand out of the wall, in courses; where none is drawn the wall is as if pointed flush. */
export const stoneParts = (side: RuinedWall, { tones, random }: Build): PartDraft[] => {
  const most = Math.max(...side.top.spots.map(([, up]) => up));
  let low = 0;
  return unevenPieces(random, most, 0.22, 0.38).flatMap((high) => {
    let west = -side.length / 2;
    const foot = low;
    low += high;
    return unevenPieces(random, side.length, 0.3, 0.75).flatMap((wide): PartDraft[] => {
      const from = west;
      west += wide;
      const isOuter = from <= -side.length / 2 + 1e-6 || west >= side.length / 2 - 1e-6;
      const drawn = random() < (isOuter ? 1 : side.stonesShare);
      const over = Math.min(upAt(side, from), upAt(side, west), upAt(side, (from + west) / 2));
      if (!drawn || foot + high > over || !isFree(side, [from, west], [foot, foot + high])) return [];
      const stone = faceStone(
        {
          middle: [from + wide / 2, foot + high / 2],
          // outer stones end just behind the other wall's face, so that no two faces lie in one plane
          widthMetres: wide - (isOuter ? 0.004 : 0.012),
          heightMetres: high - 0.012,
          faceNorthMetres: -side.out + (isOuter ? 0 : (standOutMetres - 0.006) * random()),
          depthMetres: 0.16,
          bevelMetres: 0.012,
          skewDegrees: isOuter ? 0 : 1.5,
          wornShare: isOuter ? 0 : 0.1,
          finish: pick(random, tones),
        },
        random,
      );
      return [stone];
    });
  });
};

/** Loose stones still lying on the broken top. */
export const looseParts = (side: RuinedWall, { thick, tones, random }: Build, count: number): PartDraft[] =>
  Array.from({ length: count }, (): PartDraft => {
    const size = between(random, 0.3, 0.55);
    const across = between(random, -0.46, 0.46) * side.bodyLength;
    const rest = Math.min(...[-0.4, 0, 0.4].map((t) => heightAt(side.top, across + t * size)));
    return block(size, [across, thick / 2 - side.out, rest - 0.04], pick(random, tones), random, 4);
  });

export const block = (
  size: number,
  position: [number, number, number],
  finish: FinishDraft,
  random: () => number,
  leanDegrees: number,
): PartDraft => {
  const height = size * between(random, 0.45, 0.7);
  return {
    kind: 'box',
    name: 'Fallen stone',
    position,
    turnDegrees: between(random, -180, 180),
    tiltDegrees: between(random, -leanDegrees, leanDegrees),
    rollDegrees: between(random, -leanDegrees, leanDegrees),
    widthMetres: size,
    depthMetres: size * between(random, 0.6, 0.9),
    heightMetres: height,
    topShare: between(random, 0.85, 1),
    rough: { heightMetres: 0.12 * height, sizeMetres: 1.7 * size, seed: seedFrom(random) },
    finish,
  };
};
