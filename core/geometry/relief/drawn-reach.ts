import { divideCracks } from './cracks.ts';
import { divideEvenly, divideRipples, divideWater } from './reach.ts';
import { leastAcross, type SheetShape } from './sheet.ts';

/** What of a sheet is drawn where its triangles do not reach as far, or not as fine, as its numbers say. */
export interface DrawnReach {
  readonly radiusMetres: number;
  readonly spacingMetres: number;
}

/** Radius and spacing as drawn, metres; the shape's own where the triangles are enough for them. */
export const drawnReach = (kind: 'ripples' | 'drifts' | 'cracks' | 'pool', given: SheetShape): DrawnReach => {
  if (kind === 'pool') {
    const { spacingMetres } = divideWater(given);
    return { radiusMetres: given.radiusMetres, spacingMetres };
  }
  const shape = leastAcross(given, kind === 'cracks' ? 3 : 1.5);
  const divide = { ripples: divideRipples, drifts: divideEvenly, cracks: divideCracks }[kind];
  return { radiusMetres: divide(shape).radiusMetres, spacingMetres: shape.spacingMetres };
};
