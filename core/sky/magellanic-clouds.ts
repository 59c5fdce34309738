import { halfTurnDegrees } from '../units/angle.ts';

interface Satellite {
  readonly longitude: number;
  readonly latitude: number;
  /** In its middle. */
  readonly s10: number;
  /** Falls to 1/e over this, degrees: along it and across. */
  readonly along: number;
  readonly across: number;
  readonly tilt: number;
}

/** Places and total magnitudes (0.4 and 2.2 in V) are published; sizes as in sky.md 4.3, shapes from memory. */
const satellites: readonly Satellite[] = [
  { longitude: 280.5, latitude: -32.9, s10: 430, along: 2, across: 1.28, tilt: 0.5 },
  { longitude: 302.8, latitude: -44.3, s10: 259, along: 1.1, across: 0.74, tilt: 1 },
];

/** Beyond this many lengths nothing is left to see. */
const reach = 7;

/** Light of the two clouds of Magellan, S10, at galactic degrees: discs that fall off evenly in their logarithm. */
export const magellanicS10 = (l: number, b: number): number => {
  if (b > -20 || b < -60) return 0;
  let sum = 0;
  for (const { longitude, latitude, s10, along, across, tilt } of satellites) {
    const db = b - latitude;
    const dl = halfTurnDegrees(l - longitude) * Math.cos((b * Math.PI) / 180);
    const u = (dl * Math.cos(tilt) + db * Math.sin(tilt)) / along;
    const v = (db * Math.cos(tilt) - dl * Math.sin(tilt)) / across;
    const away = Math.sqrt(u * u + v * v);
    if (away < reach) sum += s10 * Math.exp(-away);
  }
  return sum;
};
