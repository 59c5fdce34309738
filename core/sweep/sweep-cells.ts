import type { Setup } from '../setup/schema/setup.ts';
import type { SweepCell } from './cell.ts';
import { gelCells } from './gel-cells.ts';
import { type PassPlace, passAt } from './pass-at.ts';
import { angleCells, distanceCells, heightCells } from './place-cells.ts';
import { ratioCells } from './ratio-cells.ts';
import { checkPlan, type SweepPlan } from './sweep-plan.ts';

/**
 * The pictures of a sweep, row by row: each is the scheme with one pass changed, and its document stays good.
 *
 * Angles, heights and gels keep level and count, so that what they cost shows. Distances keep the dose on the surface
 * that the camera sees at the aim, as metered, and ratios set it: by level first, then by time. A lamp that is walked is
 * moved with its whole path, which its first waypoint stands for.
 *
 * @param plan metres and stops; see `sweepLimits`
 * @throws SweepError naming what of the plan or the pass is not as expected
 */
export const sweepCells = (setup: Setup, place: PassPlace, plan: SweepPlan): SweepCell[] => {
  checkPlan(plan);
  const found = passAt(setup, place);
  switch (plan.kind) {
    case 'angles':
      return angleCells(found, plan.steps, plan.heightsMetres);
    case 'heights':
      return heightCells(found, plan.heightsMetres);
    case 'distances':
      return distanceCells(setup, found, plan.distancesMetres);
    case 'gels':
      return gelCells(found, plan.gels);
    case 'ratios':
      return ratioCells(setup, found, plan.stops);
  }
};
