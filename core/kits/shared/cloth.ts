import type { PartDraft } from '../kit.ts';

export type Point = [east: number, up: number];

/**
 * Thickness of cloth, metres. Light that falls on cloth from behind starts a hundredth of a millimetre off the face that
 * is seen; cloth has to be thinner, or its other face would keep that light off. Its two faces then act as one sheet.
 */
export const clothMetres = 4e-6;
/** Decimals that parts of cloth need. */
export const clothDecimals = 6;

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
