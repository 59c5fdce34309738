import { degreesFromRadians } from '../units/angle.ts';

/**
 * Air that the light of a point (a star, the moon) comes through, as a multiple of what is straight up.
 *
 * @param sinAltitude sine of the height at which it is seen; at and below the horizon the value at the horizon, 37.9.
 * Within 0.5 % of the table of the same paper. It is 0.9997 straight up.
 * Source: Kasten and Young 1989, Applied Optics 28, 4735.
 */
export const airMass = (sinAltitude: number): number => {
  const sine = Math.min(Math.max(sinAltitude, 0), 1);
  const degrees = degreesFromRadians(Math.asin(sine));
  return 1 / (sine + 0.50572 * (degrees + 6.07995) ** -1.6364);
};

/**
 * Depth of the layers that glow or scatter, as a multiple of what is straight up: for diffuse light only. 1 straight up,
 * 5 at the horizon and below it. Source: Krisciunas and Schaefer 1991, PASP 103, 1033, eq. 3.
 */
export const skyAirMass = (sinAltitude: number): number => {
  const sine = Math.min(Math.max(sinAltitude, 0), 1);
  return 1 / Math.sqrt(1 - 0.96 * (1 - sine * sine));
};

const earthRadiusKm = 6371;
/** Height of thin high cloud: common, no published source. */
const cloudHeightKm = 9;

/** Way through a thin layer of high cloud, as a multiple of what is straight up: 1 straight up, 18.8 at the horizon. */
export const cloudAirMass = (sinAltitude: number): number => {
  const sine = Math.min(Math.max(sinAltitude, 0), 1);
  const cosAtCloud = Math.sqrt(1 - sine * sine) / (1 + cloudHeightKm / earthRadiusKm);
  return 1 / Math.sqrt(1 - cosAtCloud * cosAtCloud);
};
