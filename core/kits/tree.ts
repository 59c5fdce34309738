import { finishNamed } from '../setup/finish-presets.ts';
import type { FinishDraft, Kit, PartDraft } from './kit.ts';
import { between, seedFrom } from './shared/between.ts';
import { type Bough, barePieces, limbPieces } from './shared/boughs.ts';
import { extentsTogether, roughExtents } from './shared/rough-extents.ts';
import { rod } from './shared/struts.ts';
import { tidyParts } from './shared/tidy-parts.ts';
import { tonesOf } from './shared/tones.ts';

type Ball = Extract<PartDraft, { kind: 'sphere' }>;

const sunkMetres = 0.15;
/** The crown is fitted until width and height are so near, or so often. */
const goodMetres = 5e-4;
const rounds = 16;

interface Tree {
  readonly high: number;
  readonly wide: number;
  readonly trunkRadius: number;
  /** Height of the lowest leaves. */
  readonly clear: number;
  /** Height where the trunk parts into limbs. */
  readonly fork: number;
}

/** A trunk that widens into its roots. */
const trunkPart = ({ trunkRadius: r, fork }: Tree, random: () => number): PartDraft => {
  const up = (share: number) => share * fork;
  return {
    kind: 'turned',
    name: 'Trunk',
    position: [0, 0, -sunkMetres],
    profile: [
      [r * 1.45, 0],
      [r * 1.18, sunkMetres + up(0.04)],
      [r * 1.0, sunkMetres + up(0.15)],
      [r * 0.86, sunkMetres + up(0.4)],
      [r * 0.72, sunkMetres + up(0.75)],
      [r * 0.62, sunkMetres + up(1.02)],
    ],
    sides: 14,
    rough: {
      heightMetres: Math.min(0.09 * r, 0.08),
      sizeMetres: Math.max(1.6 * r, fork / 10, 0.1),
      seed: seedFrom(random),
    },
  };
};

/** Puffs of leaves on an egg-shaped crown: most near its surface, a few in the middle so that one does not see through. */
const crownParts = ({ high, wide, clear }: Tree, random: () => number): Ball[] => {
  const tall = high - clear;
  const tones = tonesOf(finishNamed('foliage'), 0.2);
  const puff = (share: number, turn: number, up: number, size: number, finish: FinishDraft): Ball => {
    // as wide and high as the crown needs, so that puffs hang together in tall and in flat ones
    const radius = (size * wide) / 2;
    const heightMetres = size * tall * between(random, 1, 1.2);
    const out = share * (wide / 2 - radius);
    return {
      kind: 'sphere',
      name: 'Leaves',
      position: [out * Math.sin(turn), out * Math.cos(turn), clear + up * (tall - heightMetres)],
      turnDegrees: between(random, -180, 180),
      radiusMetres: radius,
      radiusNorthMetres: radius * between(random, 0.85, 1),
      heightMetres,
      sides: 12,
      rough: {
        heightMetres: 0.26 * Math.min(radius, heightMetres / 1.5),
        // small enough that low light finds clumps of leaves, not one large ball
        sizeMetres: 0.68 * Math.max(radius, heightMetres / 2),
        seed: seedFrom(random),
      },
      finish,
    };
  };
  const tone = (k: number) => tones[k % tones.length] as FinishDraft;
  const ring = (count: number, share: number, up: number, size: number, from: number) =>
    Array.from({ length: count }, (_, k) => {
      const turn = ((k + between(random, -0.25, 0.25)) / count) * 2 * Math.PI + from;
      return puff(
        share * between(random, 0.9, 1),
        turn,
        up + between(random, -0.1, 0.1),
        size * between(random, 0.88, 1.12),
        tone(from + k),
      );
    });
  return [
    ...ring(6, 1, 0.16, 0.4, 0),
    ...ring(4, 0.75, 0.62, 0.4, 1),
    puff(0.15, 2, 1, 0.42, tone(2)),
    puff(0, 0, 0.42, 0.52, tone(1)),
  ];
};

/** The crown moved and scaled so that it is as wide and high as typed, bumps and all. */
const fittedCrown = (crown: readonly Ball[], { high, wide, clear }: Tree): Ball[] => {
  let fitted = [...crown];
  for (let round = 0; round < rounds; round++) {
    const { low, high: most } = extentsTogether(fitted.map(roughExtents));
    if (Math.max(Math.abs(most[0] - low[0] - wide), Math.abs(most[2] - high)) < goodMetres) break;
    const level = wide / (most[0] - low[0]);
    const upright = (high - clear) / (most[2] - clear);
    const middle = (low[0] + most[0]) / 2;
    fitted = fitted.map((ball) => {
      const [east, north, up] = ball.position as [number, number, number];
      return {
        ...ball,
        position: [(east - middle) * level, north * level, clear + (up - clear) * upright],
        radiusMetres: ball.radiusMetres * level,
        radiusNorthMetres: (ball.radiusNorthMetres as number) * level,
        heightMetres: (ball.heightMetres as number) * upright,
      };
    });
  }
  return fitted;
};

const boughPart = ({ from, to, radii, level }: Bough): PartDraft =>
  rod(level === 0 ? 'Limb' : level < 3 ? 'Branch' : 'Twig', from, to, radii, { sides: Math.max(10 - 2 * level, 4) });

export const tree: Kit = {
  name: 'tree',
  label: 'Tree',
  says: 'A broad tree that stands alone, in leaf or bare.',
  fields: [
    { key: 'heightMetres', label: 'Height', unit: 'm', min: 2, max: 30, initial: 8.5, step: 0.5 },
    { key: 'crownMetres', label: 'Width of the crown', unit: 'm', min: 1, max: 25, initial: 7, step: 0.5 },
    { key: 'trunkMetres', label: 'Thickness of the trunk', unit: 'm', min: 0.1, max: 2.5, initial: 0.9, step: 0.05 },
    { key: 'clearMetres', label: 'Lowest leaves at', unit: 'm', min: 0.5, max: 12, initial: 4, step: 0.25 },
    { key: 'leaves', label: 'Crown', unit: '', min: 0, max: 1, initial: 0, step: 1, choices: ['In leaf', 'Bare'] },
  ],
  make: ({ heightMetres = 8.5, crownMetres = 7, trunkMetres = 0.9, clearMetres = 4, leaves = 0 }, random) => {
    const clear = Math.min(clearMetres, 0.7 * heightMetres);
    const made: Tree = {
      high: heightMetres,
      wide: crownMetres,
      // a trunk is no thicker than a fifth of what it carries
      trunkRadius: Math.min(trunkMetres / 2, 0.1 * Math.min(heightMetres, crownMetres)),
      clear,
      fork: 0.72 * clear,
    };
    const trunk = trunkPart(made, random);
    const shape = {
      fork: [0, 0, made.fork] as const,
      radius: made.trunkRadius * 0.6,
      reach: crownMetres / 2,
      rise: heightMetres - made.fork,
    };
    /** Goes on from the trunk into the leaves, however far up they begin. */
    const leader: Bough = {
      from: [0, 0, made.fork - made.trunkRadius * 0.5],
      to: [0, 0, clear + 0.45 * (heightMetres - clear)],
      radii: [made.trunkRadius * 0.5, made.trunkRadius * 0.25],
      level: 0,
    };
    const parts =
      leaves === 1
        ? [trunk, ...barePieces(shape, random).map(boughPart)]
        : [
            trunk,
            boughPart(leader),
            ...limbPieces(shape, random).map(boughPart),
            ...fittedCrown(crownParts(made, random), made),
          ];
    return { finish: finishNamed('bark'), parts: tidyParts(parts) };
  },
};
