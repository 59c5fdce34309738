import { saturationRatio } from '../camera/exposure.ts';
import { tracePicture } from '../trace/picture.ts';
import type { World, WorldFrame } from '../world/world.ts';

/** Share of the picture, 0 to 1, where a channel is full: after the white balance, as a camera's histogram counts. */
export interface ClippedReading {
  readonly red: number;
  readonly green: number;
  readonly blue: number;
}

/** Width of the small picture that is counted. */
const columns = 48;

/** Counts full channels in a small picture of a frame: direct light, no noise. */
export const clippedReading = (world: World, frame: WorldFrame): ClippedReading => {
  const rows = Math.max(Math.round(columns / world.aspect), 1);
  const still = { ...frame, development: { ...frame.development, noise: null } };
  const picture = tracePicture({ ...world, bounces: 0 }, still, { width: columns, height: rows, samples: 1 });
  const counts: [number, number, number] = [0, 0, 0];
  picture.forEach((value, i) => {
    if (value >= saturationRatio) counts[i % 3] = (counts[i % 3] as number) + 1;
  });
  const [red, green, blue] = counts.map((count) => count / (columns * rows)) as [number, number, number];
  return { red, green, blue };
};
