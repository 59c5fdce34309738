import { useApp } from '../state/app-store.ts';
import { useSession } from '../state/session.ts';
import { late } from '../ui/late.tsx';

export const ScanDialog = late(
  { name: 'The reading of scans', giveUp: () => useSession.getState().set({ scanFile: null }) },
  async () => (await import('./ScanDialog.tsx')).ScanDialog,
);

/** The dialog, while a file is being brought in. */
export const ScanDialogSlot = () => {
  const file = useSession((state) => state.scanFile);
  const schemeId = useApp((state) => state.schemeId);
  return file && <ScanDialog key={`${file.name} ${file.lastModified}`} file={file} schemeId={schemeId} />;
};
