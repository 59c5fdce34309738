import { KM_PER_AU } from 'astronomy-engine';
import { angleBetween, length, normalize, scale, sub, type Vec3 } from '../geometry/vec.ts';
import { bodyFromWay } from './frames-body.ts';
import type { MoonBody } from './sky-state.ts';

/** Mean radius of the moon, IAU. */
export const moonRadiusKm = 1737.4;

/**
 * The moon with its phase, as the place sees it: parallax moves it by up to a degree and its phase by as much.
 *
 * @param wayToMoon from the place, astronomical units, scene's axes
 * @param wayToSun the same
 * @returns distance and disc as from the place, not from the middle of the earth
 */
export const moonBody = (wayToMoon: Vec3, wayToSun: Vec3, northRadians: number): MoonBody => {
  const sunward = sub(wayToSun, wayToMoon);
  const phaseRadians = angleBetween(sunward, scale(wayToMoon, -1));
  const distanceKm = length(wayToMoon) * KM_PER_AU;
  return {
    ...bodyFromWay(wayToMoon, northRadians),
    phaseRadians,
    litShare: (1 + Math.cos(phaseRadians)) / 2,
    distanceKm,
    radiusRadians: Math.asin(moonRadiusKm / distanceKm),
    towardSun: normalize(sunward),
  };
};
