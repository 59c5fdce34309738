import { useEffect } from 'react';

/** Keeps the screen on for as long as the component is there, where the browser can; it lets go whenever the page is hidden. */
export const useWakeLock = (): void => {
  useEffect(() => {
    let lock: WakeLockSentinel | null = null;
    let isHere = true;
    const ask = async () => {
      if (document.visibilityState !== 'visible' || !('wakeLock' in navigator)) return;
      try {
        lock = await navigator.wakeLock.request('screen');
        if (!isHere) await lock.release();
      } catch {
        // a low battery, say: the screen goes dark by itself then
      }
    };
    const onVisible = () => void ask();
    document.addEventListener('visibilitychange', onVisible);
    void ask();
    return () => {
      isHere = false;
      document.removeEventListener('visibilitychange', onVisible);
      void lock?.release();
    };
  }, []);
};
