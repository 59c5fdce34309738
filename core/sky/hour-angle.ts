import { halfTurnRadians } from '../units/angle.ts';

/** Where something stands over the horizon, without refraction. */
interface Sight {
  readonly altitudeRadians: number;
  readonly bearingRadians: number;
}

/** How far something is past the meridian as an angle of the earth's turn, -pi to pi; west positive. */
export const hourAngleOf = ({ altitudeRadians, bearingRadians }: Sight, latitudeRadians: number): number => {
  const west = -Math.sin(bearingRadians) * Math.cos(altitudeRadians);
  const north = Math.cos(bearingRadians) * Math.cos(altitudeRadians);
  const towardEquator = Math.cos(latitudeRadians) * Math.sin(altitudeRadians) - Math.sin(latitudeRadians) * north;
  return halfTurnRadians(Math.atan2(west, towardEquator));
};

/** Declination of something seen from a latitude, radians. */
export const declinationOf = ({ altitudeRadians, bearingRadians }: Sight, latitudeRadians: number): number => {
  const north = Math.cos(bearingRadians) * Math.cos(altitudeRadians);
  const sine = Math.sin(latitudeRadians) * Math.sin(altitudeRadians) + Math.cos(latitudeRadians) * north;
  return Math.asin(Math.min(1, Math.max(-1, sine)));
};

/** The sight of a declination at an hour angle: the way back from the two above. */
export const sightOf = (hourAngleRadians: number, declinationRadians: number, latitudeRadians: number): Sight => {
  const [sinD, cosD] = [Math.sin(declinationRadians), Math.cos(declinationRadians)];
  const [sinL, cosL] = [Math.sin(latitudeRadians), Math.cos(latitudeRadians)];
  const east = -cosD * Math.sin(hourAngleRadians);
  const north = sinD * cosL - cosD * Math.cos(hourAngleRadians) * sinL;
  const up = sinD * sinL + cosD * Math.cos(hourAngleRadians) * cosL;
  const bearing = Math.atan2(east, north);
  return {
    altitudeRadians: Math.atan2(up, Math.hypot(east, north)),
    bearingRadians: bearing < 0 ? bearing + 2 * Math.PI : bearing,
  };
};
