import type { GroundPoint } from '../../geometry/hull.ts';
import type { Box } from './plan-frame.ts';

/** A numbered circle on the plan: where it is true, and where it is drawn. */
export interface PlacedCircle {
  readonly spot: GroundPoint;
  readonly middle: GroundPoint;
  readonly isAside: boolean;
}

/** Of the circle round a number, millimetres. */
export const circleRadius = 3.9;
/** Between two circles, millimetres. */
const gap = 0.7;

const apart = (a: GroundPoint, b: GroundPoint): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** Where to look for room round a spot: nearest first, to the right first. */
const tries: readonly GroundPoint[] = [9, 12, 15, 19, 24, 30].flatMap((radius) =>
  Array.from({ length: 16 }, (_, k): GroundPoint => {
    const turn = (k % 2 === 0 ? 1 : -1) * Math.ceil(k / 2) * (Math.PI / 8);
    return [radius * Math.cos(turn), radius * Math.sin(turn)];
  }),
);

/**
 * Places circles at their spots, in order; one that would lie on another, or on what is kept free, is moved aside into
 * the box. Where there is no room left it stays where it is.
 */
export const placeCircles = (
  spots: readonly GroundPoint[],
  box: Box,
  keptFree: readonly GroundPoint[],
): PlacedCircle[] => {
  const placed: PlacedCircle[] = [];
  const isInside = ([x, y]: GroundPoint) =>
    x >= box.x + circleRadius &&
    x <= box.x + box.width - circleRadius &&
    y >= box.y + circleRadius &&
    y <= box.y + box.height - circleRadius;
  const isFree = (middle: GroundPoint, own: number) =>
    placed.every((each) => apart(each.middle, middle) >= 2 * circleRadius + gap) &&
    keptFree.every((place) => apart(place, middle) >= circleRadius + 3) &&
    // circles aside don't cover the spots of others
    (own < 0 || spots.every((spot, s) => s === own || apart(spot, middle) >= circleRadius + 1));
  spots.forEach((spot, s) => {
    const aside = tries
      .map(([x, y]): GroundPoint => [spot[0] + x, spot[1] + y])
      .find((middle) => isInside(middle) && isFree(middle, s));
    const middle = isFree(spot, -1) ? spot : (aside ?? spot);
    placed.push({ spot, middle, isAside: middle !== spot });
  });
  return placed;
};
