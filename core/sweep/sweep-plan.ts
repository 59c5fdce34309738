import type { Gel } from '../setup/schema/setup.ts';
import { SweepError, type SweepField } from './sweep-error.ts';

/** Gels that are hung together, under the name that people call them by. */
export interface GelStack {
  readonly name: string;
  readonly gels: readonly Gel[];
}

/** What is changed from cell to cell of a sweep; all else of the scheme stays as it is. */
export type SweepPlan =
  /** The lamp walked round its aim at its level distance, in even steps of the clock from six, as the clock runs. */
  | { readonly kind: 'angles'; readonly steps: number; readonly heightsMetres: readonly number[] }
  /** The lamp raised where it stands. Heights over the ground. */
  | { readonly kind: 'heights'; readonly heightsMetres: readonly number[] }
  /** Level distances from the aim along the present bearing, with the dose at the target kept. */
  | { readonly kind: 'distances'; readonly distancesMetres: readonly number[] }
  /** Gels in place of the present ones; level and count stay, so that what a gel costs shows. */
  | { readonly kind: 'gels'; readonly gels: readonly GelStack[] }
  /** The pass as the fill, so many stops under the strongest other pass of its frame. */
  | { readonly kind: 'ratios'; readonly stops: readonly number[] };

export type SweepKind = SweepPlan['kind'];

/** What a sweep takes. The limits are our choice. */
export const sweepLimits = {
  steps: [1, 36],
  heights: 12,
  /** Over the ground: a lamp under it lights nothing. */
  heightMetres: [0.02, 2000],
  /** Level distance, metres: nearer than the first, a lamp has no bearing. */
  distanceMetres: [0.05, 10000],
  ratioStops: [0, 10],
  gels: 8,
  cells: 144,
} as const;

const refuse = (field: SweepField, expected: string): never => {
  throw new SweepError(field, expected);
};

const checkList = (field: SweepField, length: number, most: number): void => {
  if (length < 1) refuse(field, 'must hold at least one');
  if (length > most) refuse(field, `must be at most ${most}, not ${length}`);
};

const checkRange = (
  field: SweepField,
  values: readonly number[],
  [low, high]: readonly [number, number],
  unit: string,
): void => {
  for (const value of values)
    if (!(value >= low && value <= high)) refuse(field, `must each be from ${low} to ${high} ${unit}, not ${value}`);
};

/** Refuses what is no sweep, or too large a one. Throws `SweepError` naming the field and what was expected. */
export const checkPlan = (plan: SweepPlan): void => {
  const { steps, heights, heightMetres, distanceMetres, ratioStops, gels, cells } = sweepLimits;
  switch (plan.kind) {
    case 'angles': {
      const [low, high] = steps;
      if (!Number.isInteger(plan.steps) || plan.steps < low || plan.steps > high)
        refuse('steps', `must be a whole number from ${low} to ${high}, not ${plan.steps}`);
      checkList('heightsMetres', plan.heightsMetres.length, heights);
      checkRange('heightsMetres', plan.heightsMetres, heightMetres, 'm');
      const all = plan.steps * plan.heightsMetres.length;
      if (all > cells)
        refuse('steps', `must make at most ${cells} cells with its heights, not ${all}: fewer steps, or fewer heights`);
      return;
    }
    case 'heights':
      checkList('heightsMetres', plan.heightsMetres.length, heights);
      checkRange('heightsMetres', plan.heightsMetres, heightMetres, 'm');
      return;
    case 'distances':
      checkList('distancesMetres', plan.distancesMetres.length, cells);
      checkRange('distancesMetres', plan.distancesMetres, distanceMetres, 'm');
      return;
    case 'gels':
      checkList('gels', plan.gels.length, cells);
      for (const stack of plan.gels)
        if (stack.gels.length > gels) refuse('gels', `must be at most ${gels} in a stack, not ${stack.gels.length}`);
      return;
    case 'ratios':
      checkList('stops', plan.stops.length, cells);
      checkRange('stops', plan.stops, ratioStops, 'stops');
      return;
  }
};
