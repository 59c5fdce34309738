import type { SweepCell } from '../../../core/sweep/cell.ts';
import type { SweepKind } from '../../../core/sweep/sweep-plan.ts';
import { Screen } from '../picture/Screen.tsx';
import type { OnScreenSize } from '../picture/use-screen-sizes.ts';
import { useSweeps } from '../state/sweeps.ts';
import { CautionMark } from '../ui/CautionMark.tsx';
import { cautionText, cellLines, placeWords } from './cell-words.ts';
import type { PresentCell } from './present-cell.ts';
import { screenOf } from './sheet-of.ts';

interface CellTileProps {
  readonly kind: SweepKind;
  readonly cell: SweepCell;
  readonly index: number;
  readonly aspect: number;
  /** Whether the tabulator key comes here. */
  readonly isEntry: boolean;
  readonly present: PresentCell | null;
  readonly onSize: OnScreenSize;
}

/** A small picture with its name, its numbers and the marks of its cautions; pressed, it is seen large. */
export const CellTile = ({ kind, cell, index, aspect, isEntry, present, onSize }: CellTileProps) => {
  const isOpen = useSweeps((state) => state.openId === cell.id);
  const read = useSweeps((state) => state.readings[cell.id]);
  const isMissing = useSweeps((state) => state.isCancelled && state.pictures.shown <= index);
  const { open } = useSweeps.getState();
  const presentWord = present?.id === cell.id ? (present.isExact ? 'now' : 'nearest to now') : null;
  const lines = cellLines(kind, cell, read);
  const cautions = read?.cautions ?? [];
  // what is not written on the tile, for those who hear it
  const name = placeWords(kind, cell.column);
  const unseen = [placeWords(kind, cell.row), ...cautions.map(cautionText), ...(isMissing ? ['not traced'] : [])];
  return (
    <li>
      <button
        type="button"
        className="cell"
        data-cell={cell.id}
        tabIndex={isEntry ? 0 : -1}
        aria-pressed={isOpen}
        onClick={() => open(isOpen ? null : cell.id)}
      >
        <span className="cell-picture" style={{ aspectRatio: aspect }} aria-hidden="true">
          <Screen name={screenOf(cell)} label={name} onSize={onSize} />
          {isMissing && <span className="cell-missing">not traced</span>}
        </span>
        <span className="cell-name">
          <strong>{name}</strong>
          {presentWord && (
            <span className="cell-present" title="Where the lamp is in the scheme">
              {presentWord}
            </span>
          )}
          <span className="cell-marks">
            {cautions.map((caution) => (
              <span key={caution.code} title={cautionText(caution)}>
                <CautionMark severity={caution.severity} />
              </span>
            ))}
          </span>
        </span>
        {lines.map((line, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: lines without a life of their own
          <span key={i} className="cell-line">
            {line}
          </span>
        ))}
        <span className="unseen">{unseen.join(', ')}</span>
      </button>
    </li>
  );
};
