import type { HalfPlane } from './half-planes.ts';

/** Halvings that leave nothing of a straight angle. */
const halvings = 60;

/**
 * Angle off the axis in radians where a half plane falls through half the peak: the outermost one within 90 degrees;
 * light that goes on past 90 is followed to its end, pi where it never falls that far. Found by halving, and exact at
 * hard edges. Null where the half plane has no half of the peak in front.
 *
 * @param peakPerLumen the lamp's peak over all half planes, above 0
 */
export const halfPeakAngle = ({ edges, at, topOf }: HalfPlane, peakPerLumen: number): number | null => {
  // lower by rounding alone is not lower
  const half = (peakPerLumen / 2) * (1 - 1e-12);
  let stretch = edges.findLastIndex((edge) => edge <= Math.PI / 2 + 1e-9) - 1;
  while (stretch >= 0 && at(stretch, topOf(stretch)) < half) stretch--;
  if (stretch < 0) return null;
  let inside = topOf(stretch);
  for (;;) {
    const end = edges[stretch + 1] as number;
    if (at(stretch, end) < half) break;
    const goesOn = stretch + 2 < edges.length && at(stretch + 1, end) >= half;
    if (!goesOn) return end;
    stretch++;
    inside = end;
  }
  let outside = edges[stretch + 1] as number;
  for (let i = 0; i < halvings; i++) {
    const middle = (inside + outside) / 2;
    if (at(stretch, middle) >= half) inside = middle;
    else outside = middle;
  }
  return inside;
};
