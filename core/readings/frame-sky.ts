import type { Triple } from '../colour/matrix.ts';
import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { scale, type Vec3 } from '../geometry/vec.ts';
import type { SeenSky } from '../sky/seen-sky.ts';
import { seenAlong } from '../trace/sky-picture.ts';
import type { WorldLight } from '../world/world.ts';

/** The moon as a light of a frame. */
export interface FrameMoon {
  readonly light: WorldLight;
  /** Unit, to where it is seen. */
  readonly toward: Vec3;
  /** On what faces it. */
  readonly lux: number;
}

type Lights = { readonly lights: readonly WorldLight[] };

/** The moon of a frame, be it of the hour or the plain one; null where it gives no light. */
export const moonOf = ({ lights }: Lights): FrameMoon | null => {
  for (const light of lights) {
    const lux = luminanceOfLinearSrgb(light.strength);
    if (light.source.kind === 'moon' && lux > 0) return { light, toward: light.source.toward, lux };
  }
  return null;
};

/** The sky of the hour as it is seen; null where it is plain. */
export const seenSkyOf = ({ lights }: Lights): SeenSky | null => {
  for (const { source } of lights) if (source.kind === 'seen-sky') return source.sky;
  return null;
};

/** Light of all the sky but the moon on level ground in the open, lux. */
export const skyLuxOf = ({ lights }: Lights): number =>
  lights
    .filter(({ source }) => source.kind === 'sky' || source.kind === 'dome')
    .reduce((sum, { strength }) => sum + luminanceOfLinearSrgb(strength), 0);

/**
 * Luminance of a frame's sky by direction, cd/m^2 in linear RGB, its stars spread evenly: the sky of the hour with the glow
 * of towns, or the plain even one. Haze before it is not looked at: it gives about as much of the sky's light as it takes.
 */
export const skyOf = (frame: Lights): ((toward: Vec3) => Triple) => {
  const seen = seenSkyOf(frame);
  if (seen) return (toward) => seenAlong(seen, toward);
  const plain = frame.lights.find(({ source }) => source.kind === 'sky');
  const even: Triple = plain ? scale(plain.strength, 1 / Math.PI) : [0, 0, 0];
  return () => even;
};
