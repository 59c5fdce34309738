import type { GroundPoint } from '../../../core/geometry/hull.ts';

/** Where a lamp’s words stand from its disc: under it, near the drawing’s lower edge over it; always on the drawing. */
export const lampWordsAt = ([x, y]: GroundPoint): GroundPoint => [
  Math.min(0, 200 - x) + Math.max(0, -200 - x),
  y > 200 ? -14 : 23,
];

/** About as long as what a selected lamp says of its place. */
export const placeWords = '12:00 · 10.0 m';

/** Of a letter on the plan; from line to line; of a lamp’s disc, with some air. */
const [letterWidth, lineHeight, discRadius] = [6.6, 15, 18];
/** Where words of a way may stand from its middle: a little over it as a rule. */
const offsets = [-6, -22, -38, -54, 18, 34, 50] as const;

/** Height on the drawing at which words of a way lie neither on its lamp nor on the lamp’s words. */
export const wayWordsY = ([x, y]: GroundPoint, words: string, lamp: GroundPoint, lampWords: string): number => {
  const [wx, wy] = lampWordsAt(lamp);
  const half = (words.length * letterWidth) / 2;
  const isClear = (at: number) => {
    const besideWords = Math.abs(x - lamp[0] - wx) >= half + (lampWords.length * letterWidth) / 2;
    const besideDisc = Math.abs(x - lamp[0]) >= half + discRadius;
    return (
      (besideWords || Math.abs(at - lamp[1] - wy) >= lineHeight) &&
      // letters stand over their line
      (besideDisc || Math.abs(at - 4 - lamp[1]) >= discRadius)
    );
  };
  return offsets.map((offset) => y + offset).find(isClear) ?? y - 6;
};
