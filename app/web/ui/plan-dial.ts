import type { GroundPoint } from '../../../core/geometry/hull.ts';
import { lampWordsAt } from './lamp-words-at.ts';
import { type PlanView, planHalf, ringStep, ringWords, toPlan } from './plan-view.ts';

/** A rectangle of the drawing. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** The box that holds some points, with a margin round it. */
export const boxRound = (points: readonly GroundPoint[], margin: number): Box => ({
  left: Math.min(...points.map(([x]) => x)) - margin,
  right: Math.max(...points.map(([x]) => x)) + margin,
  top: Math.min(...points.map(([, y]) => y)) - margin,
  bottom: Math.max(...points.map(([, y]) => y)) + margin,
});

/** Whether two boxes lie on each other. */
export const meet = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

/** Where the numerals of the clock stand. */
export const clockRadius = planHalf * 0.93;

/** The numerals of the clock, each with its middle. */
export const clockNumerals = [12, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11].map((hour) => {
  const turn = (hour * Math.PI) / 6;
  return { hour, at: [Math.sin(turn) * clockRadius, -Math.cos(turn) * clockRadius] as GroundPoint };
});

/** What the clock covers. */
export const clockBoxes: readonly Box[] = clockNumerals.map(({ hour, at: [x, y] }) => {
  const half = 4.5 * String(hour).length;
  return { left: x - half, right: x + half, top: y - 6, bottom: y + 6 };
});

/** The middle of the north arrow, and the left end of the scale bar. */
export const northAt: GroundPoint = [planHalf - 36, 44 - planHalf];
export const scaleBarAt: GroundPoint = [14 - planHalf, planHalf - 14];

/** From the arrow's middle toward true north, which is that far anticlockwise of the scene's own north axis. */
export const northOnPlan = (view: PlanView, northDegrees: number): GroundPoint => {
  const north = (northDegrees * Math.PI) / 180;
  return toPlan({ ...view, centre: [0, 0], unitsPerMetre: 15 }, [-Math.sin(north), Math.cos(north)]);
};

/** The button that lies over the lower right corner, as large as it is on a phone's drawing. */
const buttonBox: Box = { left: 143, top: 178, right: planHalf, bottom: planHalf };

/** What stands at the plan's edge whatever the sky: twelve o'clock and the rings' distances, north arrow, scale bar, the button. */
export const dialBoxes = (view: PlanView, northDegrees: number): Box[] => {
  const [nx, ny] = northOnPlan(view, northDegrees);
  const along = [-1, 1.9].map((far): GroundPoint => [northAt[0] + nx * far, northAt[1] + ny * far]);
  const [x, y] = scaleBarAt;
  const step = ringStep(view);
  const scaleEnd = x + step * view.unitsPerMetre + 5 + 6.2 * ringWords(step).length;
  return [
    { left: -9, right: 9, top: -clockRadius - 8, bottom: -clockRadius + 6 },
    { left: 4, right: 42, top: -planHalf, bottom: -12 },
    boxRound(along, 6),
    { left: x, right: scaleEnd, top: y - 9, bottom: y + 4 },
    buttonBox,
  ];
};

/** A lamp's disc and its words, which stand in the middle of their place. */
export const lampBoxes = ([x, y]: GroundPoint, words: string): Box[] => {
  const [dx, dy] = lampWordsAt([x, y]);
  const half = 3.5 * words.length;
  return [boxRound([[x, y]], 9), { left: x + dx - half, right: x + dx + half, top: y + dy - 11, bottom: y + dy + 4 }];
};
