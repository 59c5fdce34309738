import type { Triple } from '../colour/matrix.ts';
import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { add, scale, type Vec3 } from '../geometry/vec.ts';
import type { SeenSky } from '../sky/seen-sky.ts';
import { seenAlong } from '../trace/sky-picture.ts';
import { throughToSky } from '../trace/through-air.ts';
import { airLight } from '../world/air-light.ts';
import type { Stage } from '../world/stage.ts';
import type { WorldFrame, WorldLight } from '../world/world.ts';

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
 * of towns, or the plain even one, over any haze.
 */
export const clearSkyOf = (frame: Lights): ((toward: Vec3) => Triple) => {
  const seen = seenSkyOf(frame);
  if (seen) return (toward) => seenAlong(seen, toward);
  const plain = frame.lights.find(({ source }) => source.kind === 'sky');
  const even: Triple = plain ? scale(plain.strength, 1 / Math.PI) : [0, 0, 0];
  return () => even;
};

/**
 * The same as the camera sees it: what haze near the ground leaves of it, and what haze gives of its own by moon and sky.
 */
export const skyOf = (
  { air }: Pick<Stage, 'air'>,
  frame: Pick<WorldFrame, 'lights' | 'view'>,
): ((toward: Vec3) => Triple) => {
  const clear = clearSkyOf(frame);
  if (!air) return clear;
  return (direction) => {
    const through = throughToSky(air, { origin: frame.view.position, direction });
    return frame.lights
      .filter(({ source }) => source.kind !== 'lamp')
      .reduce<Triple>(
        (sum, { source, strength }) => add(sum, scale(strength, airLight(source, direction, through))),
        scale(clear(direction), through),
      );
  };
};
