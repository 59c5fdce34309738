import { useEffect, useRef } from 'react';
import type { SweepCell } from '../../../core/sweep/cell.ts';
import { passAt } from '../../../core/sweep/pass-at.ts';
import { Screen } from '../picture/Screen.tsx';
import type { OnScreenSize } from '../picture/use-screen-sizes.ts';
import { useApp, useSetup } from '../state/app-store.ts';
import { mostCompared } from '../state/compared-schemes.ts';
import { applyCell, schemeOfCell } from '../state/edits/sweep-edits.ts';
import { useSession } from '../state/session.ts';
import { type SweepRun, useSweeps } from '../state/sweeps.ts';
import { CellNumbers } from './CellNumbers.tsx';
import { CellRemarks } from './CellRemarks.tsx';
import { aspectOf } from './cell-picture.ts';
import { placeWords } from './cell-words.ts';
import { takeWords } from './kind-words.ts';
import { largeScreen } from './use-sheet.ts';

interface OpenCellProps {
  readonly run: SweepRun;
  readonly cell: SweepCell;
  readonly onSize: OnScreenSize;
}

/** A picture of the sweep seen large, its numbers in words, and what can be made of it. */
export const OpenCell = ({ run, cell, onSize }: OpenCellProps) => {
  const setup = useSetup();
  const ref = useRef<HTMLElement>(null);
  const { edit, select, tell } = useApp.getState();
  const { open } = useSweeps.getState();
  const { place, plan } = run;
  const name = [cell.column, cell.row].map((text) => placeWords(plan.kind, text)).join(' · ');
  const changed = applyCell(setup, place, cell, plan.kind);
  const withScheme = schemeOfCell(setup, place, cell, plan.kind);
  const apply = () => {
    edit((before) => applyCell(before, place, cell, plan.kind));
    select({ kind: 'pass', frameId: place.frameId, passId: place.passId });
  };
  const makeScheme = () => {
    edit((before) => schemeOfCell(before, place, cell, plan.kind).setup);
    const { comparedIds, set } = useSession.getState();
    // it joins what is compared, where there is room
    if (comparedIds && comparedIds.length < mostCompared) set({ comparedIds: [...comparedIds, withScheme.schemeId] });
    const made = withScheme.setup.schemes.find(({ id }) => id === withScheme.schemeId);
    tell({ tone: 'done', text: `There is a scheme “${made?.name}” now` });
  };
  const close = () => {
    open(null);
    document.querySelector<HTMLElement>(`[data-cell="${cell.id}"]`)?.focus();
  };
  // where the page scrolls as a whole, the tile that was pressed may be far below
  useEffect(() => {
    ref.current?.scrollIntoView({ block: 'nearest' });
  }, []);
  return (
    <section
      ref={ref}
      className="open-cell"
      aria-label={`Large: ${name}`}
      onKeyDown={(event) => event.key === 'Escape' && close()}
    >
      <div className="open-picture" style={{ aspectRatio: aspectOf(run) }}>
        <Screen name={largeScreen} label={`Picture: ${name}`} onSize={onSize} />
      </div>
      <div className="open-words">
        <h3>{name}</h3>
        <CellNumbers cell={cell} kind={plan.kind} />
      </div>
      <div className="open-end">
        <CellRemarks cell={cell} scheme={passAt(run.setup, place).scheme} />
        <div className="actions">
          <button type="button" disabled={changed === setup} onClick={apply}>
            {takeWords[plan.kind]}
          </button>
          <button type="button" disabled={withScheme.setup === setup} onClick={makeScheme}>
            Make a scheme of it
          </button>
          <button type="button" onClick={close}>
            Close
          </button>
        </div>
      </div>
    </section>
  );
};
