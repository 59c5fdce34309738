import { roughBallMesh } from '../../geometry/parts/blob.ts';
import { boxMesh } from '../../geometry/parts/box.ts';
import { roughRingMesh } from '../../geometry/parts/ring.ts';
import { ballDivisions, boxDivisions, ringDivisions, roughOf } from '../../setup/part-divisions.ts';
import { part } from '../../setup/schema/part.ts';
import { radiansFromDegrees } from '../../units/angle.ts';
import type { PartDraft } from '../kit.ts';
import { frameOf, placeInFrame } from './frame.ts';

type RoughDraft = Extract<PartDraft, { kind: 'box' | 'sphere' | 'ring' }>;

/** Corners of an uneven part about its own foot: x east, y up, z south. */
const cornersOf = (draft: RoughDraft): Float64Array => {
  const solid = part.parse(draft);
  if (solid.kind === 'box') {
    const dimples = solid.dimples ?? { count: 0, radiusMetres: 1, depthMetres: 0, seed: 0 };
    return boxMesh({ ...solid, dimples, rough: roughOf(solid), divisions: boxDivisions(solid) }).positions;
  }
  if (solid.kind === 'sphere') {
    const rough = solid.rough ?? { heightMetres: 0, sizeMetres: 1, seed: 0 };
    const { radiusMetres, radiusNorthMetres, heightMetres } = solid;
    const radii = [radiusMetres, (heightMetres ?? 2 * radiusMetres) / 2, radiusNorthMetres ?? radiusMetres] as const;
    return roughBallMesh(radii, rough, ballDivisions(solid, rough), false).positions;
  }
  if (solid.kind !== 'ring') throw new Error(`no extents of an uneven ${solid.kind}`);
  const rough = solid.rough ?? { heightMetres: 0, sizeMetres: 1, seed: 0 };
  const shape = { ...solid, arcRadians: radiansFromDegrees(solid.arcDegrees) };
  return roughRingMesh(shape, rough, ringDivisions(solid)).positions;
};

export interface Extents {
  readonly low: readonly [number, number, number];
  readonly high: readonly [number, number, number];
}

/** Lowest and highest [east, north, up] of an uneven part where it stands, metres: of the very triangles it will have. */
export const roughExtents = (draft: RoughDraft): Extents => {
  const corners = cornersOf(draft);
  const frame = frameOf(draft);
  const low: [number, number, number] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
  const high: [number, number, number] = [Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (let i = 0; i < corners.length; i += 3) {
    const place = placeInFrame(frame, [corners[i] as number, -(corners[i + 2] as number), corners[i + 1] as number]);
    for (const axis of [0, 1, 2] as const) {
      low[axis] = Math.min(low[axis], place[axis]);
      high[axis] = Math.max(high[axis], place[axis]);
    }
  }
  return { low, high };
};

/** Extents of several. */
export const extentsTogether = (extents: readonly Extents[]): Extents => {
  const over = (pick: (...values: number[]) => number, end: 'low' | 'high') =>
    ([0, 1, 2] as const).map((axis) => pick(...extents.map((each) => each[end][axis]))) as [number, number, number];
  return { low: over(Math.min, 'low'), high: over(Math.max, 'high') };
};
