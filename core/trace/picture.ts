import { midGreyRatioPerLuminanceSecond } from '../camera/exposure.ts';
import { displayFromMidGreyRatio } from '../camera/response.ts';
import { apply, type Triple } from '../colour/matrix.ts';
import { encodeSrgb } from '../colour/srgb.ts';
import type { World, WorldFrame, WorldLight } from '../world/world.ts';
import { type Layer, type PictureSize, traceLayers } from './layer.ts';

/** Weight of a light's layer in a frame: strength x seconds x exposure, per channel; a layer times this is in mid-greys. */
export const layerWeight = (frame: WorldFrame, light: WorldLight): Triple => {
  const factor = light.seconds * midGreyRatioPerLuminanceSecond(frame.exposure);
  return [light.strength[0] * factor, light.strength[1] * factor, light.strength[2] * factor];
};

/** Weighted sum of layers, white-balanced: linear RGB relative to mid-grey (1 = mid-grey), three numbers a pixel. */
export const mixLayers = (frame: WorldFrame, layers: readonly Layer[]): Float64Array => {
  const picture = new Float64Array(layers[0]?.length ?? 0);
  frame.lights.forEach((light, i) => {
    const weight = layerWeight(frame, light);
    const layer = layers[i] as Layer;
    for (let p = 0; p < picture.length; p++)
      picture[p] = (picture[p] as number) + (layer[p] as number) * (weight[p % 3] as number);
  });
  for (let p = 0; p < picture.length; p += 3)
    picture.set(apply(frame.whiteBalance, picture.subarray(p, p + 3) as never), p);
  return picture;
};

/** A frame's linear picture by the reference estimator. */
export const tracePicture = (world: World, frame: WorldFrame, size: PictureSize): Float64Array =>
  mixLayers(
    frame,
    traceLayers(
      world.stage,
      world.view,
      frame.lights.map(({ source }) => source),
      size,
    ),
  );

/** Eight-bit sRGB through the camera's response, three bytes a pixel. */
export const developPicture = (linear: Float64Array): Uint8Array =>
  Uint8Array.from(linear, (v) => Math.round(255 * encodeSrgb(displayFromMidGreyRatio(v))));
