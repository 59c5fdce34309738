import type { Matrix3 } from '../colour/matrix.ts';
import { add, cross, dot, normalize, scale, sub, type Vec3 } from '../geometry/vec.ts';
import { radiansFromDegrees } from '../units/angle.ts';

/** Unit direction of a right ascension and declination, degrees; axes as those of the coordinates (x to the equinox, z north). */
export const directionFromEquatorial = (rightAscensionDegrees: number, declinationDegrees: number): Vec3 => {
  const [a, d] = [radiansFromDegrees(rightAscensionDegrees), radiansFromDegrees(declinationDegrees)];
  return [Math.cos(d) * Math.cos(a), Math.cos(d) * Math.sin(a), Math.sin(d)];
};

/** North galactic pole at J2000, and the galactic longitude of the north celestial pole. Hipparcos (ESA SP-1200), vol. 1, section 1.5.3. */
const galacticPole = directionFromEquatorial(192.85948, 27.12825);
const celestialPoleLongitude = radiansFromDegrees(122.93192);

/**
 * J2000 equatorial from galactic: its columns are the directions of l = 0, of l = 90 degrees and of the north galactic pole.
 * Built of the three angles above, so that it is a rotation to rounding.
 */
export const j2000FromGalactic: Matrix3 = (() => {
  const celestialPole: Vec3 = [0, 0, 1];
  const towardPole = normalize(sub(celestialPole, scale(galacticPole, dot(celestialPole, galacticPole))));
  const beside = cross(galacticPole, towardPole);
  const [c, s] = [Math.cos(celestialPoleLongitude), Math.sin(celestialPoleLongitude)];
  const x = sub(scale(towardPole, c), scale(beside, s));
  const y = add(scale(towardPole, s), scale(beside, c));
  const z = galacticPole;
  return [
    [x[0], y[0], z[0]],
    [x[1], y[1], z[1]],
    [x[2], y[2], z[2]],
  ];
})();
