import type { Triple } from '../../../core/colour/matrix.ts';
import { dot, sub, type Vec3 } from '../../../core/geometry/vec.ts';
import { moonAxes, moonFace } from '../../../core/sky/moon-face.ts';
import { moonThroughAir } from '../../../core/sky/moon-light.ts';
import type { SkyState } from '../../../core/sky/sky-state.ts';

/**
 * The moon's face as pictures see it, through air and thin cloud: luminance, cd/m2 in linear sRGB. Null when all of it is
 * under the level horizon.
 *
 * @returns luminance in a seen direction, unit, scene's axes; [0, 0, 0] beside the disc
 */
export const seenDisc = (state: SkyState): ((toward: Vec3) => Triple) | null => {
  const { towardSeen, radiusRadians } = state.moon;
  if (towardSeen[1] < -Math.sin(radiusRadians)) return null;
  const { luminanceAt, chord } = moonFace(state);
  const { right, up } = moonAxes(state);
  return (toward) => {
    const off = sub(toward, towardSeen);
    if (dot(off, off) > chord * chord) return [0, 0, 0];
    const luminance = luminanceAt(dot(off, right) / chord, dot(off, up) / chord);
    const [r, g, b] = moonThroughAir(state.input, toward[1]);
    return [luminance * r, luminance * g, luminance * b];
  };
};
