import { lazy, Suspense } from 'react';
import { useSession } from '../state/session.ts';

/** Fetched when the bag is opened, and early once the page is at rest. */
export const loadBag = () => import('./BagDialog.tsx').then(({ BagDialog }) => ({ default: BagDialog }));

const NotLoaded = () => (
  <p className="quiet" role="alert">
    The bag could not be loaded. Load the page again with a network; save your setup first.
  </p>
);
const Dialog = lazy(() => loadBag().catch(() => ({ default: NotLoaded })));

/** The bag, while it is open. */
export const BagSlot = () =>
  useSession((state) => state.showsBag) && (
    <Suspense fallback={null}>
      <Dialog />
    </Suspense>
  );
