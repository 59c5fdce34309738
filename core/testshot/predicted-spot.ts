import type { CameraView } from '../camera/camera-view.ts';
import { viewDirection } from '../camera/camera-view.ts';
import { cosFourth } from '../camera/vignetting.ts';
import { apply, type Triple } from '../colour/matrix.ts';
import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { cross, normalize } from '../geometry/vec.ts';
import { traceWithCovers } from '../trace/layer.ts';
import { sumLayers } from '../trace/picture.ts';
import type { World, WorldFrame } from '../world/world.ts';

/** What the rehearsal says of a spot of a frame's picture, linear RGB in mid-grey ratios after the white balance. */
export interface PredictedSpot {
  /** All light: passes, moon, sky. */
  readonly all: Triple;
  /** All but the lamp in question. */
  readonly rest: Triple;
  /** From part to part of the spot, standard deviation of the luminance in stops; what a click beside it may cost. */
  readonly spreadStops: number;
  /** Fall-off to the corner that real lenses have and this picture has not, stops, 0 or less. */
  readonly falloffLeftOutStops: number;
}

/** Pixels each way over the spot, and samples in each. */
const [across, samples] = [9, 16];

/** The view turned to a spot and narrowed to it: through a pinhole the light along each ray is the same. */
const spotView = (view: CameraView, [x, y]: readonly [number, number], radius: number): CameraView => {
  const forward = viewDirection(view, x, y);
  const right = normalize(cross(forward, view.up));
  const tan = radius * 2 * view.tanHalfWidth;
  const up = cross(right, forward);
  return { ...view, forward, right, up, tanHalfWidth: tan, tanHalfHeight: tan, lensRadiusMetres: 0 };
};

const meanOf = (picture: Float64Array): Triple => {
  const sum: [number, number, number] = [0, 0, 0];
  picture.forEach((v, i) => {
    sum[(i % 3) as 0 | 1 | 2] += v;
  });
  const count = picture.length / 3;
  return [sum[0] / count, sum[1] / count, sum[2] / count];
};

const spreadOf = (picture: Float64Array): number => {
  const stops: number[] = [];
  for (let at = 0; at < picture.length; at += 3) {
    const value = luminanceOfLinearSrgb([...picture.subarray(at, at + 3)] as unknown as Triple);
    if (value > 0) stops.push(Math.log2(value));
  }
  const middle = stops.reduce((sum, v) => sum + v, 0) / Math.max(stops.length, 1);
  return Math.sqrt(stops.reduce((sum, v) => sum + (v - middle) ** 2, 0) / Math.max(stops.length - 1, 1));
};

/**
 * Light of a spot of a frame, by the estimator that pictures are traced with, and what of it is not the lamp’s. Direct
 * light and as many bounces as the setup has; all in focus, without noise. Nothing is cut off where the sensor is full.
 *
 * @param place middle of the spot in the picture, 0 to 1 each way from the top left
 * @param radius of the spot, as a share of the picture’s width
 * @param passIds passes of the lamp in question
 */
export const predictedSpot = (
  world: World,
  frame: WorldFrame,
  place: readonly [x: number, y: number],
  radius: number,
  passIds: readonly string[],
): PredictedSpot => {
  const size = { width: across, height: across, samples };
  const sources = frame.lights.map(({ source }) => source);
  const traced = traceWithCovers(world.stage, spotView(world.view, place, radius), sources, size, world.bounces);
  const dark: WorldFrame = {
    ...frame,
    lights: frame.lights.map((light) => (passIds.includes(light.id) ? { ...light, strength: [0, 0, 0] } : light)),
  };
  const { whiteBalance, vignetting } = frame.development;
  const shade = cosFourth(world.view, ...place);
  const recorded = (picture: Float64Array): Triple => {
    const [r, g, b] = apply(whiteBalance, meanOf(picture));
    return vignetting ? [r * shade, g * shade, b * shade] : [r, g, b];
  };
  const picture = sumLayers(frame, traced);
  return {
    all: recorded(picture),
    rest: recorded(sumLayers(dark, traced)),
    spreadStops: spreadOf(picture),
    falloffLeftOutStops: vignetting ? 0 : Math.log2(shade),
  };
};
