import { type PassReport, reportPass } from '../cautions/pass-report.ts';
import type { Setup } from '../setup/schema/setup.ts';
import type { SweepCell } from './cell.ts';
import { type PassPlace, passAt } from './pass-at.ts';
import { schemeWithCell } from './setup-of-cell.ts';

/**
 * Reading and cautions of a cell's pass, with the frame's other passes as they are. Nothing else of the scheme is read:
 * about a twentieth of a second a cell on the sample with three stones.
 *
 * @throws SweepError when the pass is not there
 */
export const readCell = (setup: Setup, place: PassPlace, cell: SweepCell): PassReport => {
  const { scheme } = passAt(setup, place);
  return reportPass(setup, schemeWithCell(scheme, place, cell), place.frameId, place.passId) as PassReport;
};
