/** A place on a wall seen from the front: [across, up], metres. */
export type Spot = readonly [across: number, up: number];

const chords = 8;

/** The head of an opening whose foot is at height 0, from its west to its east springing: half a circle, or two arcs that meet in a point. */
export const archOutline = (across: number, wide: number, high: number, head: 'round' | 'pointed'): Spot[] => {
  const half = wide / 2;
  const steps = Array.from({ length: chords + 1 }, (_, k) => k / chords);
  if (head === 'round')
    return [...steps, ...steps.slice(1).map((t) => 1 + t)].map((t): Spot => {
      const angle = Math.PI * (1 - t / 2);
      return [across + half * Math.cos(angle), high - half + half * Math.sin(angle)];
    });
  // an equilateral arch: each side is an arc about the other springing
  const spring = high - (wide * Math.sqrt(3)) / 2;
  const side = (sign: number) =>
    steps.map((t): Spot => {
      const angle = (Math.PI / 3) * t;
      return [across + sign * (wide * Math.cos(angle) - half), spring + wide * Math.sin(angle)];
    });
  return [...side(-1), ...side(1).reverse().slice(1)];
};
