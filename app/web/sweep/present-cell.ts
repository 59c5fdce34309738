import type { Pass, Position } from '../../../core/setup/schema/setup.ts';
import type { SweepCell } from '../../../core/sweep/cell.ts';
import type { SweepKind } from '../../../core/sweep/sweep-plan.ts';

/** Which cell of a sweep the pass is at now. */
export interface PresentCell {
  readonly id: string;
  /** Whether it is just so, or only nearer to it than the others. */
  readonly isExact: boolean;
}

const placeOf = (pass: Pass): Position => (pass.waypoints[0] as Pass['waypoints'][number]).position;

const distanceBetween = (a: Pass, b: Pass): number => {
  const [from, to] = [placeOf(a), placeOf(b)];
  return Math.hypot(...from.map((v, i) => v - (to[i] as number)));
};

const doseOf = ({ levelPercent, on, off }: Pass): number => levelPercent * (off - on);

/** Nearer than this, in metres or stops, counts as the same. */
const near = 0.01;

/** How far a cell is from the pass, in what the sweep changes: metres, stops, or nought for the same gels. */
const apart = (kind: SweepKind, cell: Pass, pass: Pass): number => {
  if (kind === 'gels') return JSON.stringify(cell.gels) === JSON.stringify(pass.gels) ? 0 : Number.POSITIVE_INFINITY;
  if (kind !== 'ratios') return distanceBetween(cell, pass);
  const stops = Math.abs(Math.log2(doseOf(cell) / doseOf(pass)));
  return Number.isNaN(stops) ? Number.POSITIVE_INFINITY : stops;
};

/** The cell that the pass is at, or nearest to; null where none is near in any sense. */
export const presentCell = (kind: SweepKind, cells: readonly SweepCell[], pass: Pass): PresentCell | null => {
  let best: PresentCell | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const { id, pass: each } of cells) {
    const away = apart(kind, each, pass);
    if (away < least) [best, least] = [{ id, isExact: away < near }, away];
  }
  return best;
};
