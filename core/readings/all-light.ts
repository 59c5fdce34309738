import { stopsFromMidGrey } from '../camera/exposure.ts';
import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { meterReceiver } from '../trace/meter.ts';
import type { SurfacePoint } from '../trace/surface-point.ts';
import type { World, WorldFrame } from '../world/world.ts';
import { middleMoment } from './moments.ts';
import { luminanceSecondsOf, targetSurface } from './target-reading.ts';

/** Level that all light of a frame makes on a surface, stops from mid-grey; null where it is dark. */
export const surfaceStops = ({ stage }: World, frame: WorldFrame, surface: SurfacePoint): number | null => {
  const luminanceSeconds = frame.lights.reduce(
    (sum, light) =>
      sum + luminanceOfLinearSrgb(luminanceSecondsOf(surface, light, meterReceiver(stage, light.source, surface))),
    0,
  );
  return luminanceSeconds > 0 ? stopsFromMidGrey(luminanceSeconds, frame.exposure) : null;
};

/**
 * Level that all light of a frame together, moon and sky included, makes on the surface seen where one of its passes is
 * aimed.
 *
 * @param passId whose aim; of a moving pass, that of the middle of its on-time
 * @returns stops from mid-grey; null when the pass is not in the frame, the camera sees no surface there, or it is dark
 */
export const allLightStops = (world: World, frame: WorldFrame, passId: string): number | null => {
  const aimed = frame.lights.find(({ id, source }) => id === passId && source.kind === 'lamp');
  const surface = aimed ? targetSurface(world.stage, world.view.position, middleMoment(aimed).aim) : null;
  return surface ? surfaceStops(world, frame, surface) : null;
};
