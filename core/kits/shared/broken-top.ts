import type { Spot } from './arch-outline.ts';
import { between, unevenPieces } from './between.ts';

/** The upper edge of a ruined wall, from west to east. */
export interface BrokenTop {
  readonly spots: readonly Spot[];
}

export interface WholeTop {
  readonly length: number;
  /** How high the wall once was at a place, and how low it may be broken down to. */
  readonly whole: (across: number) => number;
  readonly least: (across: number) => number;
  /** 0 = still whole, 1 = broken down about by half. */
  readonly broken: number;
  /** Whether it is as high as it was in at least one place. */
  readonly reaches: boolean;
}

interface Breach {
  readonly middle: number;
  readonly half: number;
  readonly depth: number;
}

const breaches = ({ length, broken }: WholeTop, random: () => number): Breach[] =>
  Array.from({ length: 3 }, () => ({
    middle: between(random, -0.5, 0.5) * length,
    half: between(random, 0.12, 0.3) * length,
    depth: between(random, 0.35, 0.9) * broken,
  }));

/** Where more than this share is gone, stones lie level and the top steps down. */
const leastLoss = 0.06;
const leastStepMetres = 0.005;

/** A top that steps down from stone to stone into a few breaches. */
export const brokenTop = (wall: WholeTop, random: () => number): BrokenTop => {
  const { length, whole, least, broken, reaches } = wall;
  const gaps = breaches(wall, random);
  const lostAt = (across: number) =>
    Math.max(
      ...gaps.map(({ middle, half, depth }) => depth * Math.max(1 - (Math.abs(across - middle) / half) ** 2, 0)),
    );
  const pieces = unevenPieces(random, length, 0.28, 0.55);
  let west = -length / 2;
  const steps = pieces.map((wide) => {
    const [from, to] = [west, west + wide];
    west = to;
    const middle = (from + to) / 2;
    const lost = lostAt(middle);
    const gone = whole(middle) * lost + broken * between(random, 0, 0.22);
    const once = (across: number) => (lost > leastLoss ? Math.min(whole(from), whole(to)) : whole(across));
    const now = (across: number) =>
      Math.min(Math.max(once(across) - gone, least(from), least(middle), least(to)), whole(across));
    return { from, to, now, gone };
  });
  // the place that lost least is whole, or the peak where there is one
  const peak = whole(0) > whole(length / 2) + 1e-6;
  const soundest = steps.reduce((best, step) => (step.gone < best.gone ? step : best));
  const spots = steps.flatMap(({ from, to, now, gone }): Spot[] => {
    const isPeak = reaches && peak && from < 0 && to > 0;
    const isWhole = isPeak || gone === 0 || (reaches && !peak && gone === soundest.gone);
    const end = (across: number) => (isWhole ? whole(across) : now(across));
    return [[from, end(from)], ...(isPeak ? [[0, whole(0)] as const] : []), [to, end(to)]];
  });
  // steps that nobody would see are left out
  const isStep = ([e, u]: Spot, i: number) => {
    const [before, up] = spots[i - 1] ?? [Number.NaN, 0];
    return i === 0 || Math.hypot(e - before, u - up) > leastStepMetres;
  };
  return { spots: spots.filter(isStep) };
};

/** Height of the top at a place, or at its end for one beyond; the lower one where it steps. */
export const heightAt = ({ spots }: BrokenTop, place: number): number => {
  const across = Math.min(Math.max(place, (spots[0] as Spot)[0]), (spots.at(-1) as Spot)[0]);
  let lowest = Number.POSITIVE_INFINITY;
  spots.slice(1).forEach(([e, u], i) => {
    const [before, up] = spots[i] as Spot;
    if (across < before - 1e-9 || across > e + 1e-9) return;
    lowest = Math.min(lowest, e > before ? up + ((u - up) * (across - before)) / (e - before) : Math.min(u, up));
  });
  return lowest;
};
