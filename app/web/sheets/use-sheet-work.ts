import { useCallback, useEffect, useRef, useState } from 'react';
import type { Watch } from './develop-pictures.ts';

/** Work on a sheet that takes a while: how far it is (null = none under way), how to begin, how to call it off. */
export const useSheetWork = (): {
  readonly share: number | null;
  readonly run: (work: (watch: Watch) => Promise<void>) => void;
  readonly cancel: () => void;
} => {
  const [share, setShare] = useState<number | null>(null);
  const controller = useRef<AbortController | null>(null);
  const cancel = useCallback(() => controller.current?.abort(), []);
  const run = useCallback((work: (watch: Watch) => Promise<void>) => {
    const own = new AbortController();
    controller.current = own;
    setShare(0);
    void work({ onProgress: setShare, signal: own.signal }).finally(() => {
      controller.current = null;
      setShare(null);
    });
  }, []);
  // a room that is left takes its work along
  useEffect(() => cancel, [cancel]);
  return { share, run, cancel };
};
