import { degreesFromRadians } from '../units/angle.ts';

/** Rows of the table: down to a height of the sun, lg E = sum of l_i (h/90)^i. */
const rows: readonly (readonly [fromDegrees: number, l0: number, l1: number, l2: number, l3: number])[] = [
  [20, 3.74, 3.97, -4.07, 1.47],
  [5, 3.05, 13.28, -45.98, 64.33],
  [-0.8, 2.88, 22.26, -207.64, 1034.3],
  [-5, 2.88, 21.81, -258.11, -858.36],
  [-12, 2.7, 12.17, -431.69, -1899.83],
  [-18, 13.84, 262.72, 1447.42, 2797.93],
];

/**
 * Light on level ground of the clear sky at a height of the sun, lux, night's own included: 759 at the horizon, 3.4 at
 * -6 degrees, 0.0081 at -12, 6.4e-4 at -18 and below. Sunlight included while the sun is up.
 *
 * @param sunAltitudeRadians geometric height of the sun, up to pi/2. The rows meet within 5 %.
 * Source: Explanatory Supplement to the Astronomical Almanac (Seidelmann 1992), after USNO Circular 171.
 */
export const twilightIlluminance = (sunAltitudeRadians: number): number => {
  const degrees = Math.max(degreesFromRadians(sunAltitudeRadians), -18);
  const row = rows.find(([from]) => degrees >= from) as (typeof rows)[number];
  const x = degrees / 90;
  return 10 ** (row[1] + x * (row[2] + x * (row[3] + x * row[4])));
};

/** Night's own part of that table, lux: a sky of 22.0 mag/arcsec2 all over, 0.54 mlx. Our reading of its foot. */
const nightLux = 5.4e-4;
/**
 * Below nautical twilight the table falls more slowly than the zenith does in measurements (Patat et al. 2006), and would
 * ask for a horizon as bright as nobody sees. From here down twilight falls by this power for each degree: our choice.
 */
const fade = { fromDegrees: -12, perDegree: 0.72 } as const;
/** Under this height of the sun there is no twilight. */
export const twilightEndsDegrees = -21;

/**
 * Light of twilight alone on level ground, lux: the table less night's own, down to -12 degrees. Under that it falls evenly
 * in its logarithm, to 0.9e-3 at -15 and 0.1e-3 at -18; with a night of 22.0 it stays within 20 % of the table down to -17.
 * 0 from -21 down.
 */
export const twilightAloneIlluminance = (sunAltitudeRadians: number): number => {
  const degrees = degreesFromRadians(sunAltitudeRadians);
  if (degrees <= twilightEndsDegrees) return 0;
  const held = Math.max(degrees, fade.fromDegrees);
  const lux = twilightIlluminance((held * Math.PI) / 180) - nightLux;
  return lux * Math.exp(fade.perDegree * (degrees - held));
};
