import { type Exposure, stopsFromMidGrey } from '../camera/exposure.ts';
import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { normalize, sub, type Vec3 } from '../geometry/vec.ts';
import { meterReceiver } from '../trace/meter.ts';
import { type SurfacePoint, surfaceAlong } from '../trace/surface-point.ts';
import type { Stage } from '../world/stage.ts';
import type { WorldLight } from '../world/world.ts';

/** Light on the surface that the camera sees at a pass's aim point. */
export interface TargetReading {
  /** Mean over the pass's on-time. */
  readonly illuminanceLux: number;
  readonly doseLuxSeconds: number;
  /** Mean luminance toward the camera over the on-time, the colour of lamp, gel and surface included. */
  readonly luminanceCdM2: number;
  /** From mid-grey; null when no light comes. */
  readonly stops: number | null;
}

/** The surface the camera sees where the lamp is aimed; null when it looks past everything into the sky. */
export const targetSurface = (stage: Stage, camera: Vec3, aim: Vec3): SurfacePoint | null =>
  surfaceAlong(stage, camera, normalize(sub(aim, camera)));

/** Reads a surface under one light of a frame: real normal, reflectance, beam, gel and shadows. */
export const targetReading = (
  stage: Stage,
  surface: SurfacePoint,
  light: WorldLight,
  exposure: Exposure,
): TargetReading => {
  const perUnit = meterReceiver(stage, light.source, surface);
  const illuminanceLux = perUnit * luminanceOfLinearSrgb(light.strength);
  const [r, g, b] = surface.reflectance;
  const { strength } = light;
  const reflected = luminanceOfLinearSrgb([r * strength[0], g * strength[1], b * strength[2]]);
  const luminanceCdM2 = (perUnit * reflected) / Math.PI;
  return {
    illuminanceLux,
    doseLuxSeconds: illuminanceLux * light.seconds,
    luminanceCdM2,
    stops: luminanceCdM2 > 0 ? stopsFromMidGrey(luminanceCdM2 * light.seconds, exposure) : null,
  };
};
