import type { PartDraft } from '../kit.ts';
import { frameOf, placeInFrame } from './frame.ts';

export type LoftDraft = Extract<PartDraft, { kind: 'loft' }>;

/** Lowest and highest [east, north, up] of a loft's corners where it stands, metres. Exact, as a loft is flat between them. */
export const loftExtents = (
  loft: Pick<LoftDraft, 'sections' | 'position' | 'turnDegrees' | 'tiltDegrees' | 'rollDegrees'>,
): { readonly low: readonly [number, number, number]; readonly high: readonly [number, number, number] } => {
  const frame = frameOf(loft);
  const corners = loft.sections.flatMap(({ northMetres, outline }) =>
    outline.map(([east, up]) => placeInFrame(frame, [east, northMetres, up])),
  );
  const along = (pick: (...values: number[]) => number) => (axis: 0 | 1 | 2) => pick(...corners.map((c) => c[axis]));
  const [least, most] = [along(Math.min), along(Math.max)];
  return { low: [least(0), least(1), least(2)], high: [most(0), most(1), most(2)] };
};

/** The same loft, which has a position, moved. */
export const shifted = (loft: LoftDraft, [east, north, up]: readonly [number, number, number]): LoftDraft => {
  const [e, n, u] = loft.position as [number, number, number];
  return { ...loft, position: [e + east, n + north, u + up] };
};
