/** What a sheet of relief is made from. Lengths in metres. */
export interface SheetShape {
  /** From the lowest to the highest of the relief itself. */
  readonly heightMetres: number;
  /** From crest to crest, drift to drift, crack to crack. */
  readonly spacingMetres: number;
  /** Radius of the circle that the sheet keeps within. */
  readonly radiusMetres: number;
  readonly seed: number;
  /** Most triangles that it may have. */
  readonly maxTriangles: number;
}

/**
 * How high the lowest places of a sheet lie over the ground plane, metres: the plane goes on under it, and two faces in
 * one place would fight for each pixel.
 */
export const sheetLiftMetres = 0.003;

/** Eases from 0 at `low` to 1 at `high`, flat at both. */
export const smoothstep = (low: number, high: number, x: number): number => {
  const t = Math.min(Math.max((x - low) / (high - low), 0), 1);
  return t * t * (3 - 2 * t);
};

/** The same shape with so many spacings to its radius at least. */
export const leastAcross = (shape: SheetShape, spacings: number): SheetShape => ({
  ...shape,
  spacingMetres: Math.min(shape.spacingMetres, shape.radiusMetres / spacings),
});
