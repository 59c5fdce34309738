import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { middleMoment } from '../readings/moments.ts';
import { targetSurface } from '../readings/target-reading.ts';
import type { Pass, Setup } from '../setup/schema/setup.ts';
import { meterReceiver } from '../trace/meter.ts';
import { buildWorld, type WorldLight } from '../world/world.ts';
import type { FoundPass } from './pass-at.ts';

/**
 * Dose of a pass on the surface that the camera sees at its aim, lux seconds: beam, size of the lamp, gels, shadows and
 * the way that it walks count.
 *
 * @returns null when the camera sees no surface there; 0 when no light of the pass comes
 */
export const targetDoseLuxSeconds = (setup: Setup, { scheme, frame }: FoundPass, pass: Pass): number | null => {
  const { stage, view, frames } = buildWorld(setup, { ...scheme, frames: [{ ...frame, passes: [pass] }] });
  const light = frames[0]?.lights[0] as WorldLight;
  const surface = targetSurface(stage, view.position, middleMoment(light).aim);
  if (!surface) return null;
  return meterReceiver(stage, light.source, surface) * luminanceOfLinearSrgb(light.strength) * light.seconds;
};
