import { saturationRatio } from '../camera/exposure.ts';
import type { World } from '../world/world.ts';
import { type SmallPicture, smallPictures } from './small-picture.ts';

/** Share of the picture, 0 to 1, where a channel is full: after the white balance, as a camera's histogram counts. */
export interface ClippedReading {
  readonly red: number;
  readonly green: number;
  readonly blue: number;
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

/** Counts full channels in every frame, in order. */
export const clippedReadings = (world: World): ClippedReading[] => smallPictures(world).map(clippedReading);
