import type { GroundPoint } from '../../../core/geometry/hull.ts';
import { type PlanColouring, type PlanInks, planInks } from './plan-inks.ts';
import { type PlanView, planHalf } from './plan-view.ts';

interface PathShape {
  /** SVG path. */
  readonly path: string;
  readonly fill: string | null;
  readonly stroke: string | null;
  readonly width: number;
  readonly dash: readonly number[];
  readonly opacity: number;
}

interface TextShape {
  readonly text: string;
  readonly x: number;
  /** Of the line that the letters stand on. */
  readonly y: number;
  readonly size: number;
  readonly anchor: 'start' | 'middle';
  readonly colour: string;
  readonly isStrong: boolean;
}

/** A piece of a small plan, in units of `planHalf` round its middle, x to the right and y down. */
export type PlanShape = PathShape | TextShape;

/** What the parts of one small plan are drawn with. */
export interface PlanPen {
  readonly view: PlanView;
  readonly inks: PlanInks;
  readonly isPaper: boolean;
  /** One pixel of the finished drawing, and the height of its letters, in drawing units. */
  readonly pixel: number;
  readonly letters: number;
  /** A path one pixel wide without colour, with what of its look is given. */
  path(path: string, look: Partial<PathShape>): PathShape;
  /** Quiet words in the middle of a place, with what of their look is given. */
  words(text: string, at: GroundPoint, look?: Partial<TextShape>): TextShape;
}

/** Letters under nine pixels are not read; over thirteen they are loud. */
const [leastLetters, mostLetters] = [9, 13];

/** The pen for a plan of a size. */
export const planPen = (view: PlanView, colouring: PlanColouring, sizePixels: number): PlanPen => {
  const inks = planInks[colouring];
  const pixel = (2 * planHalf) / sizePixels;
  const letters = pixel * Math.min(Math.max(sizePixels / 30, leastLetters), mostLetters);
  return {
    view,
    inks,
    isPaper: colouring === 'paper',
    pixel,
    letters,
    path: (path, look) => ({ path, fill: null, stroke: null, width: pixel, dash: [], opacity: 1, ...look }),
    words: (text, [x, y], look) => ({
      text,
      x,
      // a third of their height down, so that figures stand in the middle
      y: y + letters * 0.36,
      size: letters,
      anchor: 'middle',
      colour: inks.quiet,
      isStrong: false,
      ...look,
    }),
  };
};
