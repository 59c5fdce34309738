import { useCallback, useEffect, useRef, useState } from 'react';
import { useApp } from '../state/app-store.ts';
import type { Watch } from './develop-pictures.ts';

/**
 * Work on a sheet that takes a while: how far it is (null = none under way), how to begin, how to call it off. When it
 * fails, the user is told why.
 */
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
    void work({ onProgress: setShare, signal: own.signal })
      .catch((error: unknown) => {
        const why = error instanceof Error ? error.message : String(error);
        useApp.getState().tell({ tone: 'problem', text: `The sheet could not be made: ${why}` });
      })
      .finally(() => {
        controller.current = null;
        setShare(null);
      });
  }, []);
  // a room that is left takes its work along
  useEffect(() => cancel, [cancel]);
  return { share, run, cancel };
};
