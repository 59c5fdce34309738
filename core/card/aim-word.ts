import { dot, type Vec3 } from '../geometry/vec.ts';
import { targetSurface } from '../readings/target-reading.ts';
import type { Position } from '../setup/schema/setup.ts';
import { worldFromDocument } from '../world/axes.ts';
import type { StageSubject } from '../world/stage.ts';
import type { World } from '../world/world.ts';

/** Least extent of a subject, metres, of which one can say that a lamp is aimed at its left or its top; our choice. */
const leastMetres = 1.2;

/** "left", "right" or nothing, by the third of the extent along a way that a place lies in. */
const thirdWord = (
  { points }: StageSubject,
  way: Vec3,
  place: Vec3,
  [first, last]: readonly [first: string, last: string],
): string => {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 0; i < points.length; i += 3) {
    const along = dot(way, [points[i] as number, points[i + 1] as number, points[i + 2] as number]);
    [low, high] = [Math.min(low, along), Math.max(high, along)];
  }
  if (high - low < leastMetres) return '';
  const share = (dot(way, place) - low) / (high - low);
  return share < 1 / 3 ? first : share > 2 / 3 ? last : '';
};

/**
 * What a lamp is pointed at, in words: the subject that the camera sees there, and which third of it, left and right as
 * the camera sees it: "Lone tree, high right". "ground" where it sees the ground, "sky" past everything.
 */
export const aimWord = ({ stage, view }: World, aim: Position): string => {
  const place = worldFromDocument(aim);
  const surface = targetSurface(stage, view.position, place);
  if (!surface) return 'sky';
  const subject = stage.subjects[surface.subject];
  if (!subject) return 'ground';
  const words = [
    thirdWord(subject, [0, 1, 0], surface.position, ['low', 'high']),
    thirdWord(subject, view.right, surface.position, ['left', 'right']),
  ].filter((word) => word !== '');
  return [subject.name, ...(words.length > 0 ? [words.join(' ')] : [])].join(', ');
};
