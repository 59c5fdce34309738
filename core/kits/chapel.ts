import { finishNamed } from '../setup/finish-presets.ts';
import type { FinishDraft, Kit, PartDraft } from './kit.ts';
import { archOutline, type Spot } from './shared/arch-outline.ts';
import { between, seedFrom, unevenPieces } from './shared/between.ts';
import { type BrokenTop, brokenTop, heightAt } from './shared/broken-top.ts';
import { faceStone } from './shared/face-stone.ts';
import { placeTogether } from './shared/frame.ts';
import { tidyParts } from './shared/tidy-parts.ts';
import { pick, tonesOf } from './shared/tones.ts';

/** How far stones stand out of the walls behind them at most. */
const standOutMetres = 0.03;
const sunkMetres = 0.1;
const biteMetres = 0.1;
const lancet = { wide: 0.5, high: 2 };
const door = { wide: 1.2, high: 2.4 };

interface Hole {
  readonly across: number;
  readonly sill: number;
  readonly wide: number;
  readonly high: number;
}

/** One of the four walls, as seen from outside: it runs from its own west to its own east, its outside to its south. */
interface Side {
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
  readonly doors: readonly Hole[];
  readonly windows: readonly Hole[];
  /** Share of the face where stones are drawn one by one. */
  readonly stonesShare: number;
}

interface Build {
  readonly thick: number;
  readonly tones: readonly FinishDraft[];
  readonly random: () => number;
}

/** The wall as an upright plate: doorways cut out of its foot, windows as holes, its top broken off. */
const bodyPart = (side: Side, { thick }: Build): PartDraft => {
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

const isFree = ({ doors, windows }: Side, [west, east]: Spot, [low, high]: Spot): boolean =>
  [...doors, ...windows].every(
    ({ across, sill, wide, high: tall }) =>
      east < across - wide / 2 - 0.02 ||
      west > across + wide / 2 + 0.02 ||
      high < sill - 0.02 ||
      low > sill + tall + 0.02,
  );

/** Stones that stand out of the wall, in courses; where none is drawn the wall is as if pointed flush. */
const stoneParts = (side: Side, { tones, random }: Build): PartDraft[] => {
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
      const over = Math.min(heightAt(side.top, from), heightAt(side.top, west), heightAt(side.top, (from + west) / 2));
      if (!drawn || foot + high > over || !isFree(side, [from, west], [foot, foot + high])) return [];
      const stone = faceStone(
        {
          middle: [from + wide / 2, foot + high / 2],
          widthMetres: wide - 0.012,
          heightMetres: high - 0.012,
          faceNorthMetres: -side.out + (isOuter ? 0 : (standOutMetres - 0.006) * random()),
          depthMetres: 0.16,
          bevelMetres: 0.012,
          skewDegrees: isOuter ? 0 : 1.5,
          wornShare: isOuter ? 0.03 : 0.1,
          finish: pick(random, tones),
        },
        random,
      );
      return [stone];
    });
  });
};

/** Loose stones still lying on the broken top. */
const looseParts = (side: Side, { thick, tones, random }: Build, count: number): PartDraft[] =>
  Array.from({ length: count }, (): PartDraft => {
    const size = between(random, 0.3, 0.55);
    const across = between(random, -0.46, 0.46) * side.bodyLength;
    const rest = Math.min(...[-0.4, 0, 0.4].map((t) => heightAt(side.top, across + t * size)));
    return block(size, [across, thick / 2 - side.out, rest - 0.04], pick(random, tones), random, 4);
  });

const block = (
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

/** Stones that came down, inside and out, lying in the ground a little. */
const fallenParts = (length: number, width: number, broken: number, { tones, random, thick }: Build): PartDraft[] =>
  Array.from({ length: Math.round(6 + 18 * broken) }, (_, k) => {
    const inside = k % 3 === 0;
    const size = between(random, 0.3, 0.8);
    const along = between(random, -0.5, 0.5) * (inside ? length - 2 * thick - 1 : length + 1.5);
    const beyond = inside
      ? between(random, -0.5, 0.5) * Math.max(width - 2 * thick - 1, 0.1)
      : (k % 3 === 1 ? -1 : 1) * (width / 2 + size * 0.7 + 1.6 * random() ** 2);
    return block(size, [along, beyond, -0.12 * size], pick(random, tones), random, 16);
  });

export const chapel: Kit = {
  name: 'roofless-chapel',
  label: 'Roofless chapel',
  says: 'A ruin of four walls: doorway in the west, lancets in the front and in the east gable.',
  fields: [
    { key: 'lengthMetres', label: 'Length', unit: 'm', min: 6, max: 30, initial: 10, step: 0.5 },
    { key: 'widthMetres', label: 'Width', unit: 'm', min: 4, max: 12, initial: 6, step: 0.5 },
    { key: 'wallMetres', label: 'Height of the walls', unit: 'm', min: 3.2, max: 8, initial: 4, step: 0.25 },
    { key: 'gableMetres', label: 'Top of the east gable', unit: 'm', min: 4, max: 16, initial: 7.5, step: 0.25 },
    { key: 'thickMetres', label: 'Thickness of the walls', unit: 'm', min: 0.4, max: 1.2, initial: 0.7, step: 0.05 },
    { key: 'lancets', label: 'Lancets in the front', unit: '', min: 0, max: 4, initial: 2, step: 1 },
    { key: 'broken', label: 'Broken, 0 to 1', unit: '', min: 0, max: 1, initial: 0.5, step: 0.05 },
  ],
  make: (
    {
      lengthMetres = 10,
      widthMetres = 6,
      wallMetres = 4,
      gableMetres = 7.5,
      thickMetres = 0.7,
      lancets = 2,
      broken = 0.5,
    },
    random,
  ) => {
    const stone = finishNamed('sandstone');
    const build: Build = { thick: thickMetres, tones: tonesOf(stone, 0.14), random };
    const gable = Math.max(gableMetres, wallMetres + 0.5);
    const inner = lengthMetres - 2 * thickMetres;
    const count = Math.min(Math.round(lancets), Math.floor(inner / 1.2));
    const windows = Array.from({ length: count }, (_, k): Hole => {
      const across = ((k + 0.5) / count - 0.5) * inner;
      return { across, sill: 0.9, ...lancet };
    });
    const slope = (across: number) => wallMetres + (gable - wallMetres) * (1 - (2 * Math.abs(across)) / widthMetres);
    const even = () => wallMetres;
    /** Tops stay whole over openings. */
    const keep = (holes: readonly Hole[]) => (across: number) =>
      Math.max(0.6, ...holes.map((h) => (Math.abs(across - h.across) < h.wide / 2 + 0.5 ? h.sill + h.high + 0.25 : 0)));
    const body = inner + 2 * biteMetres;
    const eastLancet: Hole = { across: 0, sill: 1.1, ...lancet };
    const westDoor: Hole = { across: 0, sill: 0, ...door };
    const long = (name: string, turnDegrees: number, holes: readonly Hole[], stonesShare: number): Side => ({
      name,
      length: lengthMetres,
      bodyLength: body,
      out: widthMetres / 2,
      setBack: 0.002,
      turnDegrees,
      top: brokenTop({ length: body, whole: even, least: keep(holes), broken, reaches: true }, random),
      doors: [],
      windows: holes,
      stonesShare,
    });
    const short = (
      name: string,
      turnDegrees: number,
      holes: readonly Hole[],
      share: number,
      isDoor: boolean,
    ): Side => ({
      name,
      length: widthMetres,
      bodyLength: widthMetres - 2 * standOutMetres,
      out: lengthMetres / 2,
      setBack: 0,
      turnDegrees,
      top: brokenTop(
        {
          length: widthMetres - 2 * standOutMetres,
          whole: slope,
          least: keep(holes),
          broken: isDoor ? broken : broken * 0.12,
          reaches: !isDoor,
        },
        random,
      ),
      doors: isDoor ? holes : [],
      windows: isDoor ? [] : holes,
      stonesShare: share,
    });
    const walls = [
      long('Front wall', 0, windows, 0.42),
      short('West gable', 90, [westDoor], 0.3, true),
      long('Back wall', 180, [], 0.12),
      short('East gable', -90, [eastLancet], 0.2, false),
    ];
    const parts = walls.flatMap((side) =>
      placeTogether(
        [bodyPart(side, build), ...stoneParts(side, build), ...looseParts(side, build, Math.round(4 * broken))],
        {
          turnDegrees: side.turnDegrees,
        },
      ),
    );
    return { finish: stone, parts: tidyParts([...parts, ...fallenParts(lengthMetres, widthMetres, broken, build)]) };
  },
};
