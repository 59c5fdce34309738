import { useSharing } from '../state/sharing.ts';
import { late } from '../ui/late.tsx';

export const ShareDialog = late(
  { name: 'Sharing', giveUp: () => useSharing.setState({ isOpen: false }) },
  async () => (await import('./ShareDialog.tsx')).ShareDialog,
);

/** The dialog, while a link is made. */
export const ShareSlot = ({ onSaveFile }: { onSaveFile: () => void }) =>
  useSharing((state) => state.isOpen) && <ShareDialog onSaveFile={onSaveFile} />;
