import { useEffect, useRef } from 'react';
import { useNightRun } from '../state/night-run.ts';

/** Tells the page that something is counted, so that a step back stops that first. */
export const useCounting = (isCounting: boolean, stop: () => void): void => {
  const latest = useRef(stop);
  latest.current = stop;
  useEffect(() => {
    if (!isCounting) return;
    useNightRun.setState({ stopCounting: () => latest.current() });
    return () => useNightRun.setState({ stopCounting: null });
  }, [isCounting]);
};
