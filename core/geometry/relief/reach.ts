import type { SheetShape } from './sheet.ts';

/** How finely a sheet of ripples is divided. */
export interface RippleDivision {
  /** Radius that is drawn, metres: the shape's own, or as far as its triangles reach. */
  readonly radiusMetres: number;
  /** Corners a ripple, across it. */
  readonly corners: number;
  /** From one row of corners to the next along the crests, in ripple spacings. */
  readonly alongSpacings: number;
}

/** A little is kept back for forks and for the rim. */
const share = 0.88;
/** Fewest corners across a ripple, most spacings along it: coarser ones would not look like ripples. */
const coarsest = { corners: 4, along: 2.8 } as const;
const finest = { corners: 8, along: 0.5 } as const;

/** Across a ripple corners stand close, along its crest far apart; both as close as the triangles allow. */
export const divideRipples = (shape: SheetShape): RippleDivision => {
  const { radiusMetres, spacingMetres } = shape;
  // triangles = 2 · area · corners / (spacing · along · spacing)
  const afford = (share * shape.maxTriangles * spacingMetres ** 2) / (2 * Math.PI * radiusMetres ** 2);
  const least = coarsest.corners / coarsest.along;
  if (afford < least)
    return {
      radiusMetres: radiusMetres * Math.sqrt(afford / least),
      corners: coarsest.corners,
      alongSpacings: coarsest.along,
    };
  const corners = Math.min(Math.max(Math.floor(Math.sqrt(8 * afford)), coarsest.corners), finest.corners);
  return { radiusMetres, corners, alongSpacings: Math.max(corners / afford, finest.along) };
};

/** How finely a sheet is divided that is about as fine both ways. */
export interface EvenDivision {
  readonly radiusMetres: number;
  /** From corner to corner, metres. */
  readonly stepMetres: number;
}

/**
 * Corners a twelfth of the spacing apart, or as close as the triangles allow, but no coarser than a third: then less of
 * the radius is covered.
 */
export const divideEvenly = (shape: SheetShape): EvenDivision => {
  const { radiusMetres, spacingMetres } = shape;
  const area = Math.PI * radiusMetres ** 2;
  const afford = Math.sqrt((2 * area) / (share * shape.maxTriangles));
  const stepMetres = Math.min(Math.max(afford, spacingMetres / 12), spacingMetres / 3);
  return { radiusMetres: radiusMetres * Math.min(stepMetres / afford, 1), stepMetres };
};

/** How finely water is divided. */
export interface WaterDivision {
  readonly stepMetres: number;
  /** From crest to crest as drawn, metres. */
  readonly spacingMetres: number;
}

/** Water keeps its extent: where its triangles are too few for its waves, these are drawn longer. */
export const divideWater = (shape: SheetShape): WaterDivision => {
  const { radiusMetres } = shape;
  const afford = Math.sqrt((2 * Math.PI * radiusMetres ** 2) / (share * shape.maxTriangles));
  const spacingMetres = Math.min(Math.max(shape.spacingMetres, 5 * afford), radiusMetres);
  return { stepMetres: Math.max(afford, Math.min(spacingMetres / 8, radiusMetres / 8)), spacingMetres };
};
