import type { Frame, Scheme, Setup } from '../setup/schema/setup.ts';
import type { SweepCell } from './cell.ts';
import { type PassPlace, passAt } from './pass-at.ts';

/** A scheme with one pass replaced by a cell's; the rest is shared. */
export const schemeWithCell = (scheme: Scheme, { frameId, passId }: PassPlace, cell: SweepCell): Scheme => {
  const changed = (frame: Frame): Frame => ({
    ...frame,
    passes: frame.passes.map((pass) => (pass.id === passId ? cell.pass : pass)),
  });
  return { ...scheme, frames: scheme.frames.map((frame) => (frame.id === frameId ? changed(frame) : frame)) };
};

/**
 * The setup with the cell's pass in place of the one that is swept. Subjects, ground and all other passes are the same
 * objects, so that stages and layers are shared.
 *
 * @throws SweepError when the pass is not there
 */
export const setupOfCell = (setup: Setup, place: PassPlace, cell: SweepCell): Setup => {
  const { scheme } = passAt(setup, place);
  const changed = schemeWithCell(scheme, place, cell);
  return { ...setup, schemes: setup.schemes.map((each) => (each === scheme ? changed : each)) };
};
