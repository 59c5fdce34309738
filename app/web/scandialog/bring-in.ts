import type { PackedScan } from '../../../core/scan/scan-code.ts';
import type { Finish } from '../../../core/setup/schema/setup.ts';
import { useApp } from '../state/app-store.ts';
import { addScanSubject } from '../state/edits/scan-edits.ts';

/**
 * Puts a packed scan into the setup as a subject and selects it.
 *
 * @returns why it is not taken, in sentences; null = it is there
 */
export const bringIn = (
  fileName: string,
  packed: PackedScan,
  reflectance: Finish['reflectance'],
  schemeId: string,
): string | null => {
  const { edit, select, tell } = useApp.getState();
  let subjectId: string | null = null;
  tell(null);
  edit((setup) => {
    const made = addScanSubject(setup, schemeId, fileName, packed, reflectance);
    ({ subjectId } = made);
    return made.setup;
  });
  if (subjectId === null) {
    // the dialog covers the page, so it says it itself
    const why = useApp.getState().notice?.text ?? 'It is not taken.';
    tell(null);
    return why;
  }
  select({ kind: 'subject', subjectId });
  tell({ tone: 'done', text: `${fileName} is brought in. Undo takes it out again.` });
  return null;
};
