import { useCallback, useState } from 'react';
import { widestOrdered } from '../../../core/trace/picture-order.ts';
import { useLight } from '../picture/use-scene.ts';
import { useApp, useSetup } from '../state/app-store.ts';
import { useSession } from '../state/session.ts';
import { Drop } from '../ui/Drop.tsx';
import { NumberField } from '../ui/NumberField.tsx';
import { developPictures } from './develop-pictures.ts';
import { measureOnPage } from './draw-sheet.ts';
import { sheetLimits } from './fit-sheet.ts';
import { PrintSheet } from './PrintSheet.tsx';
import { saveSheetFile } from './save-sheet-file.ts';
import type { Sheet } from './sheet.ts';
import { sheetLayout } from './sheet-layout.ts';
import { useSheetWork } from './use-sheet-work.ts';

/** Width that pictures are developed at for paper, as if the sheet were so many pixels wide: 150 to the inch of A4 across. */
const paperPixels = 1650;

const nothing = { tone: 'problem', text: 'There is nothing to save or print yet.' } as const;

interface Printed {
  readonly sheet: Sheet;
  readonly pictures: ReadonlyMap<string, HTMLCanvasElement>;
}

/** Takes what a room shows out of the page: as one PNG, or on paper. `describe` is asked when a button is pressed. */
export const SaveSheet = ({ describe }: { describe: () => Sheet | null }) => {
  const [width, setWidth] = useState(1920);
  const [printed, setPrinted] = useState<Printed | null>(null);
  const { share, run, cancel } = useSheetWork();
  const { tell } = useApp.getState();
  // shadows' and subjects' outlines and the patch are drawn by the page, not by the darkroom
  const hasPatch = useSetup().patch !== null;
  const hasLines = useSession(({ marks }) => marks.shadows || marks.outline) || hasPatch;
  const light = useLight();
  const isByProcessor = light === 'slow' || light === 'none';
  const isBusy = share !== null;
  const save = (close: () => void) =>
    run(async (watch) => {
      const sheet = describe();
      if (!sheet) return tell(nothing);
      const outcome = await saveSheetFile(sheet, width, watch);
      if (outcome) tell(outcome);
      if (outcome?.tone === 'done') close();
    });
  const print = () =>
    run(async (watch) => {
      const sheet = describe();
      if (!sheet) return tell(nothing);
      const { cells } = sheetLayout(sheet, paperPixels, measureOnPage());
      const boxes = new Map(cells.map(({ cell, picture }) => [cell, picture]));
      const pictures = await developPictures(sheet, (cell) => boxes.get(cell) ?? { width: 1, height: 1 }, watch);
      if (pictures) setPrinted({ sheet, pictures });
    });
  const onDone = useCallback(() => setPrinted(null), []);
  return (
    <>
      <Drop className="sheet-menu" listClass="menu-list" listLabel="Sheet" label="Save or print">
        {(close) => (
          <>
            <p>
              Pictures, plans and numbers on one sheet. Nothing leaves this machine.
              {isByProcessor &&
                ` The processor draws the pictures at most ${widestOrdered} px wide; larger ones are enlarged.`}
              {hasLines && ' Lines drawn over the pictures are left out.'}
            </p>
            <NumberField
              label="Width"
              unit="px"
              value={width}
              min={sheetLimits.narrowest}
              max={sheetLimits.widest}
              step={64}
              digits={0}
              onChange={(value) => setWidth(Math.round(value))}
            />
            <div className="choices">
              <button type="button" disabled={isBusy} onClick={() => save(close)}>
                Save PNG
              </button>
              <button type="button" disabled={isBusy} onClick={print}>
                Print
              </button>
              {isBusy && (
                <button type="button" onClick={cancel}>
                  Cancel
                </button>
              )}
            </div>
            {isBusy && (
              <p className="sheet-progress" role="status">
                <progress value={share} max={1} aria-label="Developing the pictures" /> {Math.floor(100 * share)} %
              </p>
            )}
          </>
        )}
      </Drop>
      {printed && <PrintSheet {...printed} onDone={onDone} />}
    </>
  );
};
