import { takeUpNewer, useOffline } from '../state/offline.ts';

/** Whether the page opens without a network, and a newer version of it, said at the end of the menu. */
export const OfflineLine = () => {
  const { isReady, newer } = useOffline();
  return (
    <>
      {isReady && <p className="quiet">Ready without a network</p>}
      {newer && (
        <button type="button" onClick={() => void takeUpNewer()}>
          A newer version is ready · take it up
        </button>
      )}
    </>
  );
};
