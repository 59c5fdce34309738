import { saturationRatio } from '../camera/exposure.ts';
import { type Layer, type PictureSize, traceWithCovers } from '../trace/layer.ts';
import { mixLayers } from '../trace/picture.ts';
import type { Source, World, WorldFrame } from '../world/world.ts';

/** Share of the picture, 0 to 1, where a channel is full: after the white balance, as a camera's histogram counts. */
export interface ClippedReading {
  readonly red: number;
  readonly green: number;
  readonly blue: number;
}

/** Width of the small picture that is counted. */
const columns = 48;

/** A frame's small picture. */
export interface SmallPicture {
  /** Through the pinhole, without noise. */
  readonly frame: WorldFrame;
  /** One a light, in order. */
  readonly layers: readonly Layer[];
  /** Linear RGB relative to mid-grey, three numbers a pixel. */
  readonly linear: Float64Array;
  readonly size: PictureSize;
}

/** Counts full channels in a frame's small picture. */
export const clippedReading = ({ linear: picture }: SmallPicture): ClippedReading => {
  const counts: [number, number, number] = [0, 0, 0];
  picture.forEach((value, i) => {
    if (value >= saturationRatio) counts[i % 3] = (counts[i % 3] as number) + 1;
  });
  const [red, green, blue] = counts.map((count) => (3 * count) / picture.length) as [number, number, number];
  return { red, green, blue };
};

/**
 * A small picture of each frame, in order: direct light, no noise, all in focus. Through the pinhole the frames share what
 * the camera sees and the sources that they have in common, which are traced once.
 */
export const smallPictures = ({ stage, view, aspect, frames }: World): SmallPicture[] => {
  const size = { width: columns, height: Math.max(Math.round(columns / aspect), 1), samples: 1 };
  const keys = frames.map(({ lights }) => lights.map(({ source }) => JSON.stringify(source)));
  const sources = new Map<string, Source>();
  frames.forEach(({ lights }, f) => {
    lights.forEach(({ source }, i) => {
      sources.set(keys[f]?.[i] as string, source);
    });
  });
  const traced = traceWithCovers(stage, view, [...sources.values()], size);
  const places = new Map([...sources.keys()].map((key, i) => [key, i]));
  return frames.map((each, f) => {
    const frame: WorldFrame = { ...each, view, development: { ...each.development, noise: null } };
    const at = (keys[f] as string[]).map((key) => places.get(key) as number);
    const layers = at.map((i) => traced.layers[i] as Layer);
    const covers = at.map((i) => traced.covers[i] ?? null);
    return { frame, layers, linear: mixLayers(frame, { layers, covers }, size), size };
  });
};

/** Counts full channels in every frame, in order. */
export const clippedReadings = (world: World): ClippedReading[] => smallPictures(world).map(clippedReading);
