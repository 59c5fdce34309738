import type { z } from 'zod';
import { part } from '../../setup/schema/part.ts';
import { localMesh } from '../../world/local-mesh.ts';
import type { PartDraft } from '../kit.ts';
import { frameOf, placeInFrame } from './frame.ts';

type SolidDraft = Exclude<PartDraft, { kind: 'scan' }>;

export interface Extents {
  readonly low: readonly [number, number, number];
  readonly high: readonly [number, number, number];
}

/** Lowest and highest [east, north, up] of an uneven part where it stands, metres: of the very triangles it will have. */
export const roughExtents = (draft: SolidDraft): Extents => {
  const corners = localMesh(part.parse(draft) as Exclude<z.output<typeof part>, { kind: 'scan' }>).positions;
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
