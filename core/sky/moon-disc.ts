import type { Triple } from '../colour/matrix.ts';
import { cross, dot, normalize, type Vec3 } from '../geometry/vec.ts';
import { moonLuxAboveAir, moonThroughAir } from './moon-light.ts';
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

/**
 * Luminance of the moon's disc as seen, cd/m2 in linear sRGB, through air and thin cloud: a rough sphere lit by the sun
 * from where it is, so that phase and tilt are right, and faintly by the earth. A smooth moon: no seas.
 *
 * Its lit side gives together what `moonLuxAboveAir` says (a test sums it). Lommel and Seeliger's law: the full disc is
 * as bright at its rim as in its middle, as the moon is. Null when all of it is under the level horizon.
 *
 * @returns luminance in a seen direction, unit, scene's axes; [0, 0, 0] beside the disc
 */
export const moonDisc = ({ moon, input }: SkyState): ((toward: Vec3) => Triple) | null => {
  const middle = moon.towardSeen;
  const sine = middle[1];
  if (sine < -Math.sin(moon.radiusRadians)) return null;
  const chord = 2 * Math.sin(moon.radiusRadians / 2);
  const right = normalize(cross(middle, Math.abs(middle[1]) > 0.99 ? [1, 0, 0] : [0, 1, 0]));
  const up = cross(right, middle);
  // the light comes from where the sun is from the true place; the seen one is turned by refraction, under a degree
  const sun: Vec3 = [dot(moon.towardSun, right), dot(moon.towardSun, up), -dot(moon.towardSun, middle)];
  const phase = Math.acos(Math.min(Math.max(sun[2], -1), 1));
  const earthshine = (earthshineCdM2 * (1 - Math.cos(phase))) / 2;
  const solidAngle = 2 * Math.PI * (1 - Math.cos(moon.radiusRadians));
  // mean over the disc of mu0 / (mu0 + mu) is half of `dustPhase`
  const litMean = moonLuxAboveAir(moon) / solidAngle - earthshine;
  const share = dustPhase(phase) / 2;
  const scale = share > 1e-9 ? Math.max(litMean, 0) / share : 0;
  return (toward) => {
    const dx = toward[0] - middle[0];
    const dy = toward[1] - middle[1];
    const dz = toward[2] - middle[2];
    if (dx * dx + dy * dy + dz * dz > chord * chord) return [0, 0, 0];
    const x = (right[0] * dx + right[1] * dy + right[2] * dz) / chord;
    const y = (up[0] * dx + up[1] * dy + up[2] * dz) / chord;
    const toEye = Math.sqrt(Math.max(1 - x * x - y * y, 0));
    const toSun = x * sun[0] + y * sun[1] + toEye * sun[2];
    const lit = toSun > 0 ? (scale * toSun) / (toSun + toEye + 1e-9) : 0;
    const luminance = lit + earthshine;
    const [r, g, b] = moonThroughAir(input, toward[1]);
    return [luminance * r, luminance * g, luminance * b];
  };
};
