import { degreesFromRadians } from './angle.ts';

/** A stretch between two places, as a tape, a level and a compass would give it. */
export interface MeasuredLength {
  /** Straight from one to the other, metres. */
  readonly metres: number;
  /** Over level ground, metres. */
  readonly levelMetres: number;
  /** How much higher the second is, metres; negative = lower. */
  readonly riseMetres: number;
  /** Way from the first to the second, degrees clockwise from the scene's north; null straight up, down or at one place. */
  readonly bearingDegrees: number | null;
}

type Place = readonly [east: number, north: number, up: number];

/** The stretch from one place to another, both [east, north, up] in metres. */
export const measuredLength = (from: Place, to: Place): MeasuredLength => {
  const [east, north, up] = [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
  const levelMetres = Math.hypot(east, north);
  const bearing = (degreesFromRadians(Math.atan2(east, north)) + 360) % 360;
  return {
    metres: Math.hypot(levelMetres, up),
    levelMetres,
    riseMetres: up,
    bearingDegrees: levelMetres < 1e-6 ? null : bearing,
  };
};
