import { saturationRatio } from '../camera/exposure.ts';
import { type Layer, traceLayers } from '../trace/layer.ts';
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

const countFull = (picture: Float64Array): ClippedReading => {
  const counts: [number, number, number] = [0, 0, 0];
  picture.forEach((value, i) => {
    if (value >= saturationRatio) counts[i % 3] = (counts[i % 3] as number) + 1;
  });
  const [red, green, blue] = counts.map((count) => (3 * count) / picture.length) as [number, number, number];
  return { red, green, blue };
};

/**
 * Counts full channels in a small picture of each frame, in order: direct light, no noise, all in focus. Through the
 * pinhole the frames share what the camera sees and the sources that they have in common, which are traced once.
 */
export const clippedReadings = ({ stage, view, aspect, frames }: World): ClippedReading[] => {
  const size = { width: columns, height: Math.max(Math.round(columns / aspect), 1), samples: 1 };
  const keys = frames.map(({ lights }) => lights.map(({ source }) => JSON.stringify(source)));
  const sources = new Map<string, Source>();
  frames.forEach(({ lights }, f) => {
    lights.forEach(({ source }, i) => {
      sources.set(keys[f]?.[i] as string, source);
    });
  });
  const traced = traceLayers(stage, view, [...sources.values()], size);
  const layers = new Map([...sources.keys()].map((key, i) => [key, traced[i] as Layer]));
  return frames.map((frame, f) => {
    const still: WorldFrame = { ...frame, view, development: { ...frame.development, noise: null } };
    const own = (keys[f] as string[]).map((key) => layers.get(key) as Layer);
    return countFull(mixLayers(still, own, size));
  });
};
