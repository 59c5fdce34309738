import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { ratioFromStops } from '../units/stops.ts';
import type { SmallPicture } from './small-picture.ts';

/** What whoever holds lamps does to a frame's picture: as ghosts, as shadows, and by what they stand before. */
export interface PeopleReading {
  /** Share of the picture that is told darker or brighter for it, 0 to 1. */
  readonly changedShare: number;
  /** Of that, the share that is darker. */
  readonly darkerShare: number;
}

/** A change that one sees, stops. */
const seenStops = 0.5;

/**
 * Compares a frame's small picture with and without the people in it.
 *
 * @param leastStops from mid-grey: what is darker in both is night
 * @returns null in a frame where nobody holds a lamp
 */
export const peopleReading = ({ people }: SmallPicture, leastStops: number): PeopleReading | null => {
  if (!people) return null;
  const [least, ratio] = [ratioFromStops(leastStops), ratioFromStops(seenStops)];
  const pixels = people.seen.length / 3;
  let [changed, darker] = [0, 0];
  for (let pixel = 0; pixel < pixels; pixel++) {
    const level = (picture: Float64Array) =>
      Math.max(
        luminanceOfLinearSrgb([0, 1, 2].map((c) => picture[pixel * 3 + c] as number) as [number, number, number]),
        1e-9,
      );
    const [seen, gone] = [level(people.seen), level(people.gone)];
    if (Math.max(seen, gone) < least || (seen < gone * ratio && gone < seen * ratio)) continue;
    changed++;
    if (seen < gone) darker++;
  }
  return { changedShare: changed / pixels, darkerShare: changed > 0 ? darker / changed : 0 };
};
