import type { Lm63Reader } from './lm63-reader.ts';

/** Share of its output that a lamp keeps when it is tilted. */
export interface LampTilt {
  /** How the lamp lies in the fitting: 1 base up or down, 2 level across, 3 level along (LM-63, from memory). */
  readonly geometry: 1 | 2 | 3;
  /** Ascending, 0 to 180. */
  readonly anglesDegrees: readonly number[];
  readonly factors: readonly number[];
}

const maxAngles = 4000;
const maxFactor = 1000;

/** Reads what follows TILT=INCLUDE: geometry, count, angles, factors. Throws Lm63Error. */
export const readTilt = (reader: Lm63Reader): LampTilt => {
  const geometry = reader.number('the way the lamp lies: 1, 2 or 3', (n) => n === 1 || n === 2 || n === 3);
  const count = reader.number(
    `the number of tilt angles, a whole number from 1 to ${maxAngles}`,
    (n) => Number.isInteger(n) && n >= 1 && n <= maxAngles,
  );
  const anglesDegrees: number[] = [];
  for (let k = 0; k < count; k++) {
    const before = anglesDegrees.at(-1) ?? -1;
    const rule = k === 0 ? 'a tilt angle from 0 to 180' : `a tilt angle above ${before}, up to 180`;
    anglesDegrees.push(reader.number(rule, (angle) => angle > before && angle >= 0 && angle <= 180));
  }
  const factors: number[] = [];
  for (let k = 0; k < count; k++)
    factors.push(reader.number(`a tilt factor from 0 to ${maxFactor}`, (n) => n >= 0 && n <= maxFactor));
  return { geometry: geometry as 1 | 2 | 3, anglesDegrees, factors };
};

/**
 * Factor to multiply the candelas by when the lamp is tilted: a straight line between the angles of the file.
 *
 * @param degrees tilt of the lamp, 0 to 180; before the first and after the last angle the end's factor holds
 */
export const tiltFactor = ({ anglesDegrees, factors }: LampTilt, degrees: number): number => {
  const above = anglesDegrees.findIndex((angle) => angle > degrees);
  if (above === 0) return factors[0] as number;
  if (above < 0) return factors.at(-1) as number;
  const [a, b] = [anglesDegrees[above - 1] as number, anglesDegrees[above] as number];
  const share = (degrees - a) / (b - a);
  return (factors[above - 1] as number) * (1 - share) + (factors[above] as number) * share;
};
