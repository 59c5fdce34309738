import type { Lamp, MeasuredBeam } from '../../../../core/setup/schema/setup.ts';
import { combinedShots, leastCorrectionStops, mostCorrectionStops } from '../../../../core/testshot/combined-shots.ts';
import { fluxOf } from '../../../../core/world/lamp-light.ts';

const held = (stops: number, least: number, most: number, digits: number): number =>
  Number(Math.min(Math.max(stops, least), most).toFixed(digits));

/** Test shots told against a stated output that is so many stops lower. */
export const movedShots = (shots: Lamp['testShots'], byStops: number): Lamp['testShots'] =>
  shots.map((shot) => ({ ...shot, stops: held(shot.stops + byStops, -20, 20, 3) }));

/**
 * A lamp whose box or beam was typed anew, told so that it really gives as much as before: what photos measured stands, and is
 * told against the new box. A lamp that was not corrected is just as its box says.
 */
export const rebasedLamp = (
  before: Lamp,
  after: Lamp,
  measuredBefore: readonly MeasuredBeam[],
  measuredAfter: readonly MeasuredBeam[] = measuredBefore,
): Lamp => {
  if (before.testShots.length === 0 && before.correctionStops === 0) return after;
  const by = Math.log2(fluxOf(before, measuredBefore) / fluxOf(after, measuredAfter));
  // restating a box to four figures is no change
  if (!Number.isFinite(by) || Math.abs(by) < 0.0005) return after;
  const testShots = movedShots(before.testShots, by);
  const correctionStops =
    testShots.length > 0
      ? combinedShots(testShots).correctionStops
      : held(before.correctionStops + by, leastCorrectionStops, mostCorrectionStops, 2);
  return { ...after, testShots, correctionStops };
};

/** A lamp whose output was measured itself, by a meter or on a wall: photos of before count no more. */
export const measuredAnew = (lamp: Lamp): Lamp => ({ ...lamp, testShots: [], correctionStops: 0 });
