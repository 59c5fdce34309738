import type { Pass } from '../setup/schema/setup.ts';
import { bodyHeightWord } from '../units/body-height.ts';
import type { DosedPass } from './with-dose.ts';

/** One picture of a sweep: the scheme with one pass changed. */
export interface SweepCell {
  /** Unique in its sweep. */
  readonly id: string;
  /** What is the same along a row of the sheet, for people: "knee · 0.5 m", "3:00". */
  readonly row: string;
  /** What is the same down a column: "3:00", "8 m", "1/2 CTO", "2 stops". */
  readonly column: string;
  /** The changed pass; its id, lamp and name are those of the pass that is swept. */
  readonly pass: Pass;
  /**
   * Stops by which the wanted dose is missed with this lamp's levels and this frame's time: positive too much light,
   * negative too little. null when it is met, and where none is asked for.
   */
  readonly missStops: number | null;
  /** Why level and count were left as they are; null when there is nothing to say. */
  readonly note: string | null;
}

/** A cell whose pass is all that it changes. */
export const plainCell = (id: string, row: string, column: string, pass: Pass): SweepCell => ({
  id,
  row,
  column,
  pass,
  missStops: null,
  note: null,
});

/** A cell whose pass was brought to a dose. */
export const dosedCell = (id: string, row: string, column: string, dosed: DosedPass): SweepCell => ({
  ...plainCell(id, row, column, dosed.pass),
  missStops: dosed.missStops,
});

/** "8 m", "4.24 m". */
export const sweptMetres = (metres: number): string => `${Number(metres.toFixed(2))} m`;

/** "knee · 0.5 m". */
export const heightText = (heightMetres: number): string =>
  `${bodyHeightWord(heightMetres)} · ${sweptMetres(heightMetres)}`;
