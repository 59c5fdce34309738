import type { GroundPoint } from '../geometry/hull.ts';
import type { Going } from './stop-rule-steps.ts';

/** A lamp as it is planned: where it stands, what it is aimed at, and how much higher that is; metres. */
export interface PlannedLamp {
  readonly place: GroundPoint;
  readonly aim: GroundPoint;
  /** Of the aim over the lamp. */
  readonly riseMetres: number;
}

const turnedRound = ([markEast, markNorth]: GroundPoint, [east, north]: GroundPoint, hours: number): GroundPoint => {
  const turn = (hours * Math.PI) / 6;
  const [de, dn] = [east - markEast, north - markNorth];
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  // clockwise seen from above
  return [markEast + de * cos + dn * sin, markNorth + dn * cos - de * sin];
};

/**
 * Where a lamp stands that was moved: so many hours round the mark, then to and fro on the level line to what it is aimed
 * at, until it is `distanceTimes` as far from there as planned, measured through the air, at the height of the plan. So its
 * light on what it lights goes by the distance alone. A lamp right over or under its aim only goes round.
 *
 * @returns [east, north] in metres
 */
export const movedOnLevel = (
  { place, aim, riseMetres }: PlannedLamp,
  mark: GroundPoint,
  { distanceTimes, hoursMoved }: Pick<Going, 'distanceTimes' | 'hoursMoved'>,
): GroundPoint => {
  if (distanceTimes === 1 && hoursMoved === 0) return place;
  const turned = turnedRound(mark, place, hoursMoved);
  const plannedMetres = Math.hypot(place[0] - aim[0], place[1] - aim[1]);
  const [east, north] = [turned[0] - aim[0], turned[1] - aim[1]];
  const awayMetres = Math.hypot(east, north);
  if (Math.min(plannedMetres, awayMetres) < 1e-6) return turned;
  const wantedSquare = distanceTimes ** 2 * (plannedMetres ** 2 + riseMetres ** 2) - riseMetres ** 2;
  const stretch = Math.sqrt(Math.max(0, wantedSquare)) / awayMetres;
  return [aim[0] + east * stretch, aim[1] + north * stretch];
};
