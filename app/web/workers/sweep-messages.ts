import type { Caution } from '../../../core/cautions/caution.ts';
import type { PassReading } from '../../../core/readings/pass-reading.ts';
import type { SweepCell } from '../../../core/sweep/cell.ts';
import type { PassPlace } from '../../../core/sweep/pass-at.ts';
import type { ReportRequest } from './report-messages.ts';

/** A question about one cell of a sweep; `schemeIds` holds the scheme that is swept. */
export interface CellRequest extends ReportRequest {
  readonly place: PassPlace;
  readonly cell: SweepCell;
}

/** What the changed pass of a cell does. */
export interface CellReading {
  readonly reading: PassReading;
  readonly cautions: readonly Caution[];
}

export interface CellAnswer extends CellReading {
  readonly id: number;
}
