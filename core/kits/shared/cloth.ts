import type { PartDraft } from '../kit.ts';

export type Point = [east: number, up: number];

/**
 * Thickness of cloth, metres: a shell that is thin enough for both faces to act as one sheet that light comes through
 * (`sheetMetres` in core/trace/surface-point.ts), and thick enough for an outline.
 */
export const clothMetres = 2e-4;

/** A sheet of cloth that stands across, with a closed outline. */
export const clothAcross = (name: string, northMetres: number, outline: readonly Point[]): PartDraft => ({
  kind: 'loft',
  name,
  sections: [northMetres, northMetres + clothMetres].map((north) => ({ northMetres: north, outline: [...outline] })),
});

/** Cloth stretched over an open line that runs along: from one end to the other. */
export const clothAlong = (
  name: string,
  [south, north]: readonly [number, number],
  line: readonly Point[],
  inner: readonly Point[],
): PartDraft => ({
  kind: 'loft',
  name,
  sections: [south, north].map((northMetres) => ({ northMetres, outline: [...line, ...[...inner].reverse()] })),
});
