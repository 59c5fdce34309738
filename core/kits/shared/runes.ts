import type { Spot } from './interlace.ts';

/**
 * Our own made-up signs of straight strokes, without meaning: each a stave and where arms leave it. Heights and
 * reaches are shares of the sign's height; an arm goes to the east (positive reach) or the west and up or down.
 */
interface Arm {
  readonly at: number;
  readonly reach: number;
  readonly rise: number;
}
const signs: readonly (readonly Arm[])[] = [
  [],
  [{ at: 0.5, reach: 0.32, rise: 0.28 }],
  [{ at: 0.75, reach: 0.32, rise: -0.3 }],
  [{ at: 0.35, reach: -0.3, rise: 0.26 }],
  [{ at: 0.68, reach: -0.32, rise: 0.2 }],
  [
    { at: 0.3, reach: 0.3, rise: 0.22 },
    { at: 0.65, reach: 0.3, rise: 0.22 },
  ],
  [
    { at: 0.8, reach: 0.3, rise: -0.24 },
    { at: 0.42, reach: 0.3, rise: -0.24 },
  ],
  [
    { at: 0.62, reach: 0.3, rise: 0.26 },
    { at: 0.3, reach: -0.3, rise: -0.2 },
  ],
  [
    { at: 0.55, reach: -0.28, rise: 0.3 },
    { at: 0.55, reach: 0.28, rise: 0.3 },
  ],
];
export const signCount = signs.length;

/** Where a stroke along an arm leaves the side of the stave: lower and upper corner, and its two far corners. */
const armCorners = ({ at, reach, rise }: Arm, height: number, stroke: number): Spot[] => {
  const side = Math.sign(reach);
  const [across, up] = [reach * height, rise * height];
  const length = Math.hypot(across, up);
  // the arm's width measured along the stave
  const half = (stroke / 2) * (length / Math.abs(across));
  const foot = (side * stroke) / 2;
  const slope = up / across;
  const base = at * height + slope * foot;
  const tip = at * height + up;
  return [
    [foot, base - half],
    [across, tip - half],
    [across, tip + half],
    [foot, base + half],
  ];
};

/** Outline of a sign that stands on the origin, counter-clockwise; `stroke` is the width of its cuts, metres. */
export const signOutline = (sign: number, height: number, stroke: number): [number, number][] => {
  const arms = signs[sign] as readonly Arm[];
  const onSide = (side: number) =>
    arms
      .filter(({ reach }) => Math.sign(reach) === side)
      .sort((a, b) => a.at - b.at)
      .map((arm) => armCorners(arm, height, stroke));
  const spots: Spot[] = [
    [-stroke / 2, 0],
    [stroke / 2, 0],
    ...onSide(1).flat(),
    [stroke / 2, height],
    [-stroke / 2, height],
    ...onSide(-1)
      .reverse()
      .flatMap((corners) => [...corners].reverse()),
  ];
  return spots.map(([east, up]) => [east, up]);
};
