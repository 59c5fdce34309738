import { lazy, Suspense } from 'react';
import { useSession } from '../state/session.ts';

/** Fetched when a photo is opened, and early once the page is at rest. */
export const loadTestShot = () =>
  import('./TestShotDialog.tsx').then(({ TestShotDialog }) => ({ default: TestShotDialog }));

const NotLoaded = () => (
  <p className="quiet" role="alert">
    Test shots could not be loaded. Load the page again with a network; save your setup first.
  </p>
);
const Dialog = lazy(() => loadTestShot().catch(() => ({ default: NotLoaded })));

/** The dialog, while a test shot is looked at. */
export const TestShotSlot = () => {
  const wish = useSession((state) => state.testShot);
  return (
    wish && (
      <Suspense fallback={null}>
        <Dialog wish={wish} />
      </Suspense>
    )
  );
};
