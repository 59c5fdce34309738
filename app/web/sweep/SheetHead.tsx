import { SaveSheet } from '../sheets/SaveSheet.tsx';
import { useApp, useSetup } from '../state/app-store.ts';
import { isSweeping, type SweepRun, useSweeps } from '../state/sweeps.ts';
import { hasChanged, sweptPass } from './has-changed.ts';
import { SweepProgress } from './SweepProgress.tsx';
import { sheetTitle } from './sheet-of.ts';
import { sheetToSave } from './sheet-to-save.ts';

/** What the sheet is of, how far it is, and whether it still holds. */
export const SheetHead = ({ run }: { run: SweepRun }) => {
  const setup = useSetup();
  const showsBlend = useApp((state) => state.showsBlend);
  const isBusy = useSweeps(isSweeping);
  const { start } = useSweeps.getState();
  const canRepeat = sweptPass(setup, run.place) !== undefined;
  return (
    <header className="sheet-head">
      <h2>{sheetTitle(run)}</h2>
      <SweepProgress />
      {hasChanged(run, setup) && (
        <span className="sheet-changed">
          The setup has changed since
          {canRepeat && (
            <button type="button" className="small" onClick={() => start(setup, run.place, run.plan, showsBlend)}>
              Again
            </button>
          )}
        </span>
      )}
      {!isBusy && <SaveSheet describe={() => sheetToSave(run)} />}
    </header>
  );
};
