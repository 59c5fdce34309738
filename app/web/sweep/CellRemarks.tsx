import type { Scheme } from '../../../core/setup/schema/setup.ts';
import type { SweepCell } from '../../../core/sweep/cell.ts';
import { useSweeps } from '../state/sweeps.ts';
import { CautionMark } from '../ui/CautionMark.tsx';
import { cautionSentence } from '../ui/lengths.ts';
import { missText } from './cell-words.ts';

/** What is to be said about a cell: a dose that is missed, why the light was left as it is, and its cautions. */
export const CellRemarks = ({ cell, scheme }: { cell: SweepCell; scheme: Scheme }) => {
  const cautions = useSweeps((state) => state.readings[cell.id]?.cautions);
  const miss = missText(cell);
  return (
    <>
      {miss && <p>{miss}.</p>}
      {cell.note && <p>{cell.note}</p>}
      {cautions && cautions.length > 0 && (
        <ul className="open-cautions">
          {cautions.map((caution) => (
            <li key={caution.code}>
              <CautionMark severity={caution.severity} /> {cautionSentence(caution, scheme)}
            </li>
          ))}
        </ul>
      )}
    </>
  );
};
