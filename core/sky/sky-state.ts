import type { Matrix3 } from '../colour/matrix.ts';
import type { Vec3 } from '../geometry/vec.ts';
import type { SkyInput } from './sky-input.ts';

/** A body of the sky. Directions are unit, in the scene's axes (x along the scene's east, y up, z its south). */
export interface SkyBody {
  /** Where it really is: without refraction. Topocentric. */
  readonly toward: Vec3;
  /** Where it is seen: lifted by refraction. */
  readonly towardSeen: Vec3;
  /** Geometric height over the horizon; negative below it. */
  readonly altitudeRadians: number;
  /** True bearing, clockwise from true north, 0 to 2 pi. */
  readonly bearingRadians: number;
}

export interface MoonBody extends SkyBody {
  /** Angle sun, moon, earth: 0 = full, pi = new. */
  readonly phaseRadians: number;
  /** Share of the disc that is lit, 0 to 1. */
  readonly litShare: number;
  readonly distanceKm: number;
  /** Half of what its disc measures. */
  readonly radiusRadians: number;
  /** Unit direction from the moon to the sun, scene's axes: its day side. */
  readonly towardSun: Vec3;
}

export interface Planet extends SkyBody {
  readonly name: string;
  /** V, outside the air. */
  readonly magnitude: number;
}

/** The sky at one instant. */
export interface SkyState {
  readonly input: SkyInput;
  /** Scene's axes from J2000 equatorial: precession, nutation, turn of the earth, and the scene's north. No refraction. */
  readonly worldFromJ2000: Matrix3;
  /** Scene's axes from galactic (x toward l = b = 0, z toward the north galactic pole). */
  readonly worldFromGalactic: Matrix3;
  /** Scene's axes from the ecliptic of J2000 (x toward the equinox, z toward its north pole). */
  readonly worldFromEcliptic: Matrix3;
  /** Local sidereal time as an angle, 0 to 2 pi. */
  readonly siderealRadians: number;
  readonly sun: SkyBody;
  readonly moon: MoonBody;
  readonly planets: readonly Planet[];
}
