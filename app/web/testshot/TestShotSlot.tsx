import { useSession } from '../state/session.ts';
import { late } from '../ui/late.tsx';

export const TestShotDialog = late(
  { name: 'The look at a test shot', giveUp: () => useSession.getState().set({ testShot: null }) },
  async () => (await import('./TestShotDialog.tsx')).TestShotDialog,
);

/** The dialog, while a test shot is looked at. */
export const TestShotSlot = () => {
  const wish = useSession((state) => state.testShot);
  return wish && <TestShotDialog wish={wish} />;
};
