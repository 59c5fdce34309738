import { lazy, Suspense } from 'react';
import { useApp } from '../state/app-store.ts';
import { useSharing } from '../state/sharing.ts';
import type { ShareDialog as ShareDialogType } from './ShareDialog.tsx';

const loadShareDialog = () => import('./ShareDialog.tsx');

/** Files of this room that come late are fetched ahead. */
export const fetchShareFiles = async (): Promise<void> => {
  await Promise.all([loadShareDialog(), import('./open-link.ts')]).catch(() => undefined);
};

const Missing: typeof ShareDialogType = () => <></>;

const ShareDialog = lazy(async () => {
  try {
    return { default: (await loadShareDialog()).ShareDialog };
  } catch {
    useSharing.setState({ isOpen: false });
    useApp.getState().tell({ tone: 'problem', text: 'Sharing could not be loaded. Try again with the network on.' });
    return { default: Missing };
  }
});

/** The dialog, while a link is made. */
export const ShareSlot = ({ onSaveFile }: { onSaveFile: () => void }) => {
  const isOpen = useSharing((state) => state.isOpen);
  return (
    isOpen && (
      <Suspense fallback={null}>
        <ShareDialog onSaveFile={onSaveFile} />
      </Suspense>
    )
  );
};
