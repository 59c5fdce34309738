import type { Waypoint } from '../setup/schema/setup.ts';
import { legsOf } from './path-legs.ts';

/** How fast a lamp and its light go, the slowest and the fastest leg; 0 where nothing moves. */
export interface PathSpeed {
  readonly lampMetresPerSecond: readonly [slowest: number, fastest: number];
  /** Of the place that is aimed at. */
  readonly aimMetresPerSecond: readonly [slowest: number, fastest: number];
  readonly turnRadiansPerSecond: readonly [slowest: number, fastest: number];
}

const rangeOf = (values: readonly number[]): readonly [number, number] => [Math.min(...values), Math.max(...values)];

/** Mean speeds of the legs of a path; null for a lamp that has one waypoint only. */
export const pathSpeed = (waypoints: readonly Waypoint[]): PathSpeed | null => {
  const legs = legsOf(waypoints);
  if (legs.length === 0) return null;
  return {
    lampMetresPerSecond: rangeOf(legs.map(({ positionMetres, seconds }) => positionMetres / seconds)),
    aimMetresPerSecond: rangeOf(legs.map(({ aimMetres, seconds }) => aimMetres / seconds)),
    turnRadiansPerSecond: rangeOf(legs.map(({ turnRadians, seconds }) => turnRadians / seconds)),
  };
};
