import { isInFrame } from '../camera/camera-view.ts';
import { anyHit } from '../geometry/cast-ray.ts';
import { add, scale, type Vec3 } from '../geometry/vec.ts';
import type { Setup } from '../setup/schema/setup.ts';
import { altitudeOf } from '../sky/frames-body.ts';
import { degreesFromRadians, wrapDegrees } from '../units/angle.ts';
import type { World } from '../world/world.ts';
import { moonOf } from './frame-sky.ts';

/** The moon as a light of the place, the hour's or the plain one. */
export interface MoonReading {
  readonly altitudeDegrees: number;
  /** True, and from the scene's north. */
  readonly bearingDegrees: number;
  readonly sceneBearingDegrees: number;
  /** The way that its shadows point. */
  readonly shadowBearingDegrees: number;
  readonly shadowSceneBearingDegrees: number;
  /** Length of a shadow on level ground over the height of what throws it: 1 / tan(altitude). */
  readonly shadowLengthPerHeight: number;
  /** On level ground in the open, without the light of the sky. */
  readonly levelLux: number;
  /** The middle of its disc is inside the picture's edges and nothing stands before it. */
  readonly isInFrame: boolean;
}

const far = 1e6;

/** Whether the camera sees something infinitely far away: within the picture's edges, over the horizon, past all things. */
export const isSkySeen = ({ stage, view }: World, toward: Vec3): boolean =>
  toward[1] > 0 &&
  isInFrame(view, add(view.position, scale(toward, far))) &&
  !anyHit(stage.tree, view.position, toward, far);

/** Reads the moon; null where it gives no light. */
export const moonReading = (world: World, place: Pick<Setup['place'], 'northDegrees'>): MoonReading | null => {
  const [frame] = world.frames;
  const moon = frame && moonOf(frame);
  if (!moon) return null;
  const { toward, lux } = moon;
  const scene = wrapDegrees(degreesFromRadians(Math.atan2(toward[0], -toward[2])));
  const trueFrom = (degrees: number) => wrapDegrees(degrees + place.northDegrees);
  const shadow = wrapDegrees(scene + 180);
  const altitude = altitudeOf(toward);
  return {
    altitudeDegrees: degreesFromRadians(altitude),
    bearingDegrees: trueFrom(scene),
    sceneBearingDegrees: scene,
    shadowBearingDegrees: trueFrom(shadow),
    shadowSceneBearingDegrees: shadow,
    shadowLengthPerHeight: 1 / Math.tan(Math.max(altitude, 1e-4)),
    levelLux: lux * Math.max(toward[1], 0),
    isInFrame: isSkySeen(world, toward),
  };
};
