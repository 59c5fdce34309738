import { cross, dot, normalize, type Vec3 } from '../geometry/vec.ts';
import { moonLuxAboveAir } from './moon-light.ts';
import type { SkyState } from './sky-state.ts';

/**
 * Light of the whole disc of a sphere of dust (Lommel and Seeliger's law) over that at full, by phase angle: closed form.
 * Source: Seeliger; as printed in texts on photometry of planets (from memory; a test sums the disc).
 */
export const dustPhase = (phaseRadians: number): number => {
  const half = phaseRadians / 2;
  if (half < 1e-6) return 1;
  if (half > Math.PI / 2 - 1e-6) return 0;
  return 1 - Math.sin(half) * Math.tan(half) * Math.log(1 / Math.tan(half / 2));
};

/** Luminance of the dark side under a full earth: 14.6 lx (V = -16.9) on a ground that returns 0.12 (both from memory). */
const earthshineCdM2 = 0.56;

/** Two directions square to where the moon is seen, unit, scene's axes. */
export interface MoonAxes {
  readonly right: Vec3;
  readonly up: Vec3;
}

/**
 * Axes on the moon's disc that turn with the sky: up toward the celestial pole of J2000, of which the moon stays 60 degrees
 * clear. In them the sun lights it from the same side all night.
 */
export const moonAxes = ({ moon: { towardSeen }, worldFromJ2000: m }: SkyState): MoonAxes => {
  const right = normalize(cross(towardSeen, [m[0][2], m[1][2], m[2][2]]));
  return { right, up: cross(right, towardSeen) };
};

/** The moon's disc without air before it. */
export interface MoonFace {
  /** Luminance, cd/m2, at a place in radii of the disc along `moonAxes`; on the rim for a place past it. */
  readonly luminanceAt: (x: number, y: number) => number;
  /** Half of what the disc measures as a straight line: twice the sine of half its angle. */
  readonly chord: number;
  /** Solid angle of the disc. */
  readonly steradians: number;
  /** Light of all of it outside the air, lux on what faces it. */
  readonly lux: number;
}

/**
 * The moon's disc outside the air: a rough sphere lit by the sun from where it is, so that phase and tilt are right, and
 * faintly by the earth. A smooth moon: no seas.
 *
 * Its lit side gives together what `moonLuxAboveAir` says (a test sums it). Lommel and Seeliger's law: the full disc is
 * as bright at its rim as in its middle, as the moon is.
 */
export const moonFace = (state: SkyState): MoonFace => {
  const { moon } = state;
  const { right, up } = moonAxes(state);
  // the light comes from where the sun is from the true place; the seen one is turned by refraction, under a degree
  const sun: Vec3 = [dot(moon.towardSun, right), dot(moon.towardSun, up), -dot(moon.towardSun, moon.towardSeen)];
  const phase = Math.acos(Math.min(Math.max(sun[2], -1), 1));
  const earthshine = (earthshineCdM2 * (1 - Math.cos(phase))) / 2;
  const steradians = 2 * Math.PI * (1 - Math.cos(moon.radiusRadians));
  const lux = Math.max(moonLuxAboveAir(moon), earthshine * steradians);
  // mean over the disc of mu0 / (mu0 + mu) is half of `dustPhase`
  const share = dustPhase(phase) / 2;
  const scale = share > 1e-9 ? (lux / steradians - earthshine) / share : 0;
  const luminanceAt = (x: number, y: number): number => {
    const past = Math.max(Math.hypot(x, y), 1);
    const toEye = Math.sqrt(Math.max(1 - (x * x + y * y) / past ** 2, 0));
    const toSun = (x * sun[0] + y * sun[1]) / past + toEye * sun[2];
    return earthshine + (toSun > 0 ? (scale * toSun) / (toSun + toEye + 1e-9) : 0);
  };
  return { luminanceAt, chord: 2 * Math.sin(moon.radiusRadians / 2), steradians, lux };
};
