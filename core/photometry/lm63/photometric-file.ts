import type { LampTilt } from './lamp-tilt.ts';

/** Edition of LM-63 that a file names in its first line; the first edition, of 1986, had no such line. */
export type Lm63Version = 1986 | 1991 | 1995 | 2002 | 2019;

/** One labelled line of the heading. The key is in capitals without brackets; lines added by [MORE] follow after "\n". */
export interface Lm63Keyword {
  readonly key: string;
  readonly value: string;
}

/** Size of the surface that shines. All 0 is a point. */
export interface LuminousOpening {
  /** Across the plane of horizontal angle 0, that is along 90. */
  readonly widthMetres: number;
  /** Along horizontal angle 0. */
  readonly lengthMetres: number;
  readonly heightMetres: number;
  /** The file gave a negative size, which stands for a round shape: a disc, an upright cylinder or the like. */
  readonly isRound: boolean;
}

/** What a photometric file says, with the symmetry of its planes left as it is. See `distributionOf` for use. */
export interface PhotometricFile {
  readonly version: Lm63Version;
  readonly keywords: readonly Lm63Keyword[];
  /** One line of 1 to 80 characters, from the heading. */
  readonly name: string;
  readonly lampCount: number;
  /**
   * Rated flux of one bare lamp, or null for absolute photometry. Not the flux that leaves the fitting: compare neither
   * with the integral of the candelas.
   */
  readonly lumensPerLamp: number | null;
  /** Ascending; 0 is straight down (the axis of a torch), 180 straight up. */
  readonly verticalDegrees: readonly number[];
  /** Ascending; counter-clockwise seen from above. */
  readonly horizontalDegrees: readonly number[];
  /** True candela, one row for each horizontal angle: value x multiplier x ballast factor. */
  readonly candela: readonly (readonly number[])[];
  readonly opening: LuminousOpening;
  readonly watts: number;
  /** How the output falls when the lamp is tilted; nothing of it is applied to `candela`. Null for TILT=NONE. */
  readonly tilt: LampTilt | null;
}
