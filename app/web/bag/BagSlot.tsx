import { useSession } from '../state/session.ts';
import { late } from '../ui/late.tsx';

export const BagDialog = late(
  { name: 'The bag', giveUp: () => useSession.getState().set({ showsBag: false }) },
  async () => (await import('./BagDialog.tsx')).BagDialog,
);

/** The bag, while it is open. */
export const BagSlot = () => useSession((state) => state.showsBag) && <BagDialog />;
