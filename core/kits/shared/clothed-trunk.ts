import { degreesFromRadians } from '../../units/angle.ts';
import type { PartDraft } from '../kit.ts';
import type { Joints } from './body.ts';

/** Half of the width and depth of a clothed trunk, and how far along the spine over the hips, all as shares of stature. */
const trunk: readonly (readonly [alongShare: number, halfWidth: number, halfDepth: number])[] = [
  [-0.045, 0.09, 0.062],
  [0, 0.1, 0.072],
  [0.07, 0.096, 0.067],
  [0.15, 0.103, 0.07],
  [0.21, 0.115, 0.071],
  [0.25, 0.122, 0.066],
  [0.275, 0.108, 0.056],
  [0.292, 0.08, 0.048],
  [0.308, 0.048, 0.042],
  [0.32, 0.036, 0.036],
];
const trunkSides = 28;
const trunkPieces = 27;

/** The trunk at any place along it: a smooth curve through its sections (Catmull and Rom 1974). */
const trunkAt = (at: number): readonly [number, number, number] => {
  const k = Math.min(Math.floor(at), trunk.length - 2);
  const t = at - k;
  const row = (i: number) => trunk[Math.min(Math.max(i, 0), trunk.length - 1)] as readonly [number, number, number];
  const smooth = (axis: 0 | 1 | 2) => {
    const [a, b, c, d] = [row(k - 1)[axis], row(k)[axis], row(k + 1)[axis], row(k + 2)[axis]];
    return b + 0.5 * t * (c - a + t * (2 * a - 5 * b + 4 * c - d + t * (3 * (b - c) + d - a)));
  };
  return [smooth(0), smooth(1), smooth(2)];
};

/** The trunk of a clothed body on its hips, along the spine; `stature` in metres. */
export const trunkPart = ({ hipMiddle, spine }: Joints, stature: number): PartDraft => ({
  kind: 'loft',
  name: 'Trunk',
  position: [hipMiddle[0] * stature, hipMiddle[1] * stature, hipMiddle[2] * stature],
  // sections follow each other along the spine
  tiltDegrees: -90 - degreesFromRadians(Math.atan2(-spine[1], spine[2])),
  creaseDegrees: 60,
  sections: Array.from({ length: trunkPieces + 1 }, (_, k) => trunkAt((k * (trunk.length - 1)) / trunkPieces)).map(
    ([along, halfWidth, halfDepth]) => ({
      northMetres: along * stature,
      outline: Array.from({ length: trunkSides }, (_, k): [number, number] => {
        const turn = (2 * Math.PI * k) / trunkSides;
        return [Math.cos(turn) * halfWidth * stature, Math.sin(turn) * halfDepth * stature];
      }),
    }),
  ),
});
