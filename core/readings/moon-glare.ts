import { viewDirection } from '../camera/camera-view.ts';
import { midGreyRatioPerLuminanceSecond, saturationRatio } from '../camera/exposure.ts';
import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { angleBetween, type Vec3 } from '../geometry/vec.ts';
import { surfaceAlong } from '../trace/surface-point.ts';
import { degreesFromRadians } from '../units/angle.ts';
import type { World, WorldFrame, WorldLight } from '../world/world.ts';
import { skyOf } from './frame-sky.ts';

/** What the sky round a moon in the picture does in a frame; flare in the lens comes on top of it. */
export interface MoonGlare {
  /** Share of the picture where the sky is more than the sensor holds, 0 to 1. */
  readonly fullShare: number;
  /** How far from the moon that goes, degrees; 0 where the disc alone is. */
  readonly radiusDegrees: number;
}

/** Looks across the picture. */
const columns = 72;

/** Reads the glare of a moon that the camera sees in the sky of an hour, by the smooth sky of moonlit air and cloud. */
export const moonGlare = ({ stage, view, aspect }: World, frame: WorldFrame, moonward: Vec3): MoonGlare => {
  const rows = Math.max(Math.round(columns / aspect), 2);
  const { seconds } = frame.lights.find(({ source }) => source.kind === 'seen-sky') as WorldLight;
  const perLuminance = seconds * midGreyRatioPerLuminanceSecond(frame.exposure);
  const luminanceAt = skyOf(stage, frame);
  let [full, radius] = [0, 0];
  for (let i = 0; i < columns * rows; i++) {
    const toward = viewDirection(view, ((i % columns) + 0.5) / columns, (Math.floor(i / columns) + 0.5) / rows);
    if (luminanceOfLinearSrgb(luminanceAt(toward)) * perLuminance < saturationRatio) continue;
    if (toward[1] < 0 || surfaceAlong(stage, view.position, toward)) continue;
    full++;
    radius = Math.max(radius, angleBetween(toward, moonward));
  }
  return { fullShare: full / (columns * rows), radiusDegrees: degreesFromRadians(radius) };
};
