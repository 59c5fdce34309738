import { midGreyRatioPerLuminanceSecond, stopsFromMidGrey } from '../camera/exposure.ts';
import { apply, type Triple } from '../colour/matrix.ts';
import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { normalize, sub, type Vec3 } from '../geometry/vec.ts';
import { meterReceiver } from '../trace/meter.ts';
import { type SurfacePoint, surfaceAlong } from '../trace/surface-point.ts';
import { stopsFromRatio } from '../units/stops.ts';
import type { Stage } from '../world/stage.ts';
import type { WorldFrame, WorldLight } from '../world/world.ts';

/** How full a channel of a camera's file is. */
export interface ChannelLevel {
  readonly channel: 'red' | 'green' | 'blue';
  /** From mid-grey, after the white balance. */
  readonly stops: number;
}

/** Light on the surface that the camera sees at a pass's aim point. */
export interface TargetReading {
  /** Mean over the pass's on-time. */
  readonly illuminanceLux: number;
  readonly doseLuxSeconds: number;
  /** Mean luminance toward the camera over the on-time, the colour of lamp, gel and surface included. */
  readonly luminanceCdM2: number;
  /** From mid-grey; null when no light comes. */
  readonly stops: number | null;
  /** null when no light comes. Under a warm lamp red runs ahead of `stops`. */
  readonly brightest: ChannelLevel | null;
}

/** The surface the camera sees where the lamp is aimed; null when it looks past everything into the sky. */
export const targetSurface = (stage: Stage, camera: Vec3, aim: Vec3): SurfacePoint | null =>
  surfaceAlong(stage, camera, normalize(sub(aim, camera)));

/** Light that a surface sends to the camera over a pass, linear RGB, cd s / m^2: real normal, reflectance, beam, gel and shadows. */
export const luminanceSecondsOf = (
  surface: SurfacePoint,
  { strength, seconds }: WorldLight,
  luxPerUnit: number,
): Triple => {
  const factor = (luxPerUnit * seconds) / Math.PI;
  const [r, g, b] = surface.reflectance;
  return [r * strength[0] * factor, g * strength[1] * factor, b * strength[2] * factor];
};

/** The channels that light fills in a frame's file, fullest first; those that get none are left out. */
export const channelLevels = (luminanceSeconds: Triple, frame: WorldFrame): ChannelLevel[] => {
  const balanced = apply(frame.development.whiteBalance, luminanceSeconds);
  const perUnit = midGreyRatioPerLuminanceSecond(frame.exposure);
  return (['red', 'green', 'blue'] as const)
    .flatMap((channel, c) => {
      const value = balanced[c] as number;
      return value > 0 ? [{ channel, stops: stopsFromRatio(value * perUnit) }] : [];
    })
    .sort((a, b) => b.stops - a.stops);
};

/** Reads a surface under one light of a frame. */
export const targetReading = (
  stage: Stage,
  surface: SurfacePoint,
  light: WorldLight,
  frame: WorldFrame,
): TargetReading => {
  const perUnit = meterReceiver(stage, light.source, surface);
  const illuminanceLux = perUnit * luminanceOfLinearSrgb(light.strength);
  const sent = luminanceSecondsOf(surface, light, perUnit);
  const luminanceSeconds = luminanceOfLinearSrgb(sent);
  return {
    illuminanceLux,
    doseLuxSeconds: illuminanceLux * light.seconds,
    luminanceCdM2: luminanceSeconds / light.seconds,
    stops: luminanceSeconds > 0 ? stopsFromMidGrey(luminanceSeconds, frame.exposure) : null,
    brightest: channelLevels(sent, frame)[0] ?? null,
  };
};
