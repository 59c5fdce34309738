import { finishNamed } from '../setup/finish-presets.ts';
import type { Kit, PartDraft } from './kit.ts';
import { between, seedFrom } from './shared/between.ts';
import { type Egg, letDown, settle } from './shared/resting.ts';
import { extentsTogether, roughExtents } from './shared/rough-extents.ts';
import { tidyParts } from './shared/tidy-parts.ts';
import { pick, tonesOf } from './shared/tones.ts';

type Block = Extract<PartDraft, { kind: 'box' }>;

/** How far boulders sit in the ground and in each other, as a share of half their height, so that bumps leave no gap. */
const sinkShare = 0.3;
/** A boulder is a block with its faces so far out, as a share of the egg that it is stacked as. */
const blockShare = 0.98;
const steepnesses = [0.25, 0.45, 0.65, 0.9, 1.3];
const tries = 8;
/** The pile is fitted until width and height are so near, or so often. */
const goodMetres = 5e-4;
const rounds = 16;

/** Boulders of half sizes about 0.5 to 1.5, let down one after the other, the large ones first and far out. */
const pileOf = (count: number, spread: number, random: () => number): Egg[] => {
  const sizes = Array.from({ length: count }, () => between(random, 0.5, 1.4)).sort((a, b) => b - a);
  const reach = Math.sqrt(count) * spread;
  const pile: Egg[] = [];
  sizes.forEach((size, i) => {
    const radii: Egg['radii'] = [
      size * between(random, 0.95, 1.25),
      size * between(random, 0.75, 1),
      size * between(random, 0.65, 0.9),
    ];
    const turnDegrees = between(random, -180, 180);
    const room = reach * (1 - i / count) ** 0.5;
    const falls = Array.from({ length: tries }, (): Egg => {
      const [out, turn] = [room * Math.sqrt(random()), random() * 2 * Math.PI];
      return letDown({ middle: [out * Math.cos(turn), out * Math.sin(turn), 0], radii, turnDegrees }, pile, sinkShare);
    });
    const lowest = falls.reduce((low, next) => (next.middle[2] < low.middle[2] ? next : low));
    pile.push(settle(lowest, pile, sinkShare, random));
  });
  return pile;
};

const sizeOf = (pile: readonly Egg[]): { readonly wide: number; readonly high: number } => {
  const side = (sign: number) =>
    Math.max(...pile.map(({ middle, radii }) => sign * middle[0] + Math.max(radii[0], radii[1]) * 0.9));
  return { wide: side(1) + side(-1), high: Math.max(...pile.map(({ middle, radii }) => middle[2] + radii[2])) };
};

interface Look {
  readonly seed: number;
  readonly finish: Block['finish'];
  readonly roughShare: number;
  readonly topShare: number;
  readonly lean: { readonly tiltDegrees: number; readonly rollDegrees: number };
}

const boulderOf = (
  { middle, radii, turnDegrees }: Egg,
  { seed, finish, roughShare, topShare, lean }: Look,
  [level, upright, east]: readonly [number, number, number],
): Block => {
  const [across, deep, high] = [radii[0] * level, radii[1] * level, radii[2] * upright];
  const least = Math.min(across, deep, high);
  return {
    kind: 'box',
    name: 'Boulder',
    position: [middle[0] * level + east, middle[1] * level, (middle[2] - blockShare * radii[2]) * upright],
    turnDegrees,
    // flat boulders lie flat, and tall ones stand upright
    tiltDegrees: lean.tiltDegrees * Math.min(high / deep, deep / high),
    rollDegrees: lean.rollDegrees * Math.min(high / across, across / high),
    widthMetres: 2 * blockShare * across,
    depthMetres: 2 * blockShare * deep,
    heightMetres: 2 * blockShare * high,
    roundMetres: 0.4 * least,
    topShare,
    rough: { heightMetres: roughShare * least, sizeMetres: 1.35 * Math.max(across, high), seed },
    finish,
  };
};

export const boulderPile: Kit = {
  name: 'boulder-pile',
  label: 'Boulder pile',
  says: 'Rough boulders that lie on each other, as under a crag.',
  fields: [
    { key: 'widthMetres', label: 'Width', unit: 'm', min: 1, max: 15, initial: 6, step: 0.5 },
    { key: 'heightMetres', label: 'Height', unit: 'm', min: 0.5, max: 10, initial: 6, step: 0.5 },
    { key: 'count', label: 'Boulders', unit: '', min: 1, max: 40, initial: 15, step: 1 },
    { key: 'roughShare', label: 'Roughness, 0 to 1', unit: '', min: 0, max: 1, initial: 0.5, step: 0.05 },
  ],
  make: ({ widthMetres = 6, heightMetres = 6, count = 15, roughShare = 0.5 }, random) => {
    const wanted = heightMetres / widthMetres;
    // how far boulders are spread decides how steep the pile is; the nearest is then stretched to fit
    const piles = steepnesses.map((spread) => pileOf(Math.round(count), spread, random));
    const misfit = (pile: readonly Egg[]) => Math.abs(Math.log(sizeOf(pile).high / sizeOf(pile).wide / wanted));
    const pile = piles.reduce((best, next) => (misfit(next) < misfit(best) ? next : best));
    const tones = tonesOf(finishNamed('dark-rock'), 0.15);
    const looks = pile.map(
      (): Look => ({
        seed: seedFrom(random),
        finish: pick(random, tones),
        roughShare: 0.5 * roughShare,
        topShare: between(random, 0.76, 1),
        lean: { tiltDegrees: between(random, -14, 14), rollDegrees: between(random, -14, 14) },
      }),
    );
    const natural = sizeOf(pile);
    let fit: [number, number, number] = [widthMetres / natural.wide, heightMetres / natural.high, 0];
    const made = () => pile.map((egg, i) => boulderOf(egg, looks[i] as (typeof looks)[number], fit));
    for (let round = 0; round < rounds; round++) {
      const { low, high } = extentsTogether(made().map(roughExtents));
      if (Math.max(Math.abs(high[0] - low[0] - widthMetres), Math.abs(high[2] - heightMetres)) < goodMetres) break;
      const level = (fit[0] * widthMetres) / (high[0] - low[0]);
      fit = [
        level,
        fit[1] * Math.min(Math.max(heightMetres / high[2], 0.7), 1.5),
        (fit[2] - (low[0] + high[0]) / 2) * (level / fit[0]),
      ];
    }
    return { finish: finishNamed('dark-rock'), parts: tidyParts(made()) };
  },
};
