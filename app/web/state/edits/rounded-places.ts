import type { Position } from '../../../../core/setup/schema/setup.ts';
import { withinWorld } from './within.ts';

/** To the millimetre, and no minus nought; held within what the document takes. */
export const roundedPlace = (place: Position): Position =>
  withinWorld(place).map((v) => Math.round(v * 1000) / 1000 + 0) as Position;

/** So many times as far on as `by` says. */
export const movedPlace = (p: Position, by: Position, times = 1): Position =>
  roundedPlace([p[0] + by[0] * times, p[1] + by[1] * times, p[2] + by[2] * times]);

/** Half-way between two places. */
export const middlePlace = (a: Position, b: Position): Position =>
  roundedPlace([(a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2]);
