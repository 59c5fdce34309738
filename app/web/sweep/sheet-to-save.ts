import { maxSamples } from '../picture/samples.ts';
import type { Sheet } from '../sheets/sheet.ts';
import { sweepSheet } from '../sheets/sweep-sheet.ts';
import { type SweepRun, useSweeps } from '../state/sweeps.ts';
import { cellPicture, shownFrame, tracedSize } from './cell-picture.ts';
import { screenOf, sheetOf } from './sheet-of.ts';

/** Samples that many small pictures get in a saved sheet. */
const mostSamples = 16;

/** The sheet of a sweep as it is on the page now, to be saved; null when nothing of it is there. */
export const sheetToSave = (run: SweepRun): Sheet | null => {
  const { readings, pictures, isCancelled } = useSweeps.getState();
  const saved = isCancelled ? run.cells.slice(0, pictures.shown) : run.cells;
  const cells = new Map(saved.map((cell) => [screenOf(cell), cell]));
  return sweepSheet({
    described: sheetOf({ run, readings }),
    pictureOf: (screen) => {
      const cell = cells.get(screen);
      return cell ? cellPicture(run, cell, tracedSize(run)) : null;
    },
    frame: shownFrame(run),
    samples: Math.min(maxSamples, mostSamples),
  });
};
