import { nightHours, useNightRun } from '../state/night-run.ts';

/** Frames of a scheme without a lamp that were exposed tonight. */
export const useExposed = (setupId: string, schemeId: string) => {
  const exposedAt = useNightRun((state) => state.exposedAt);
  const keyOf = (frameId: string) => `${setupId} ${schemeId} ${frameId}`;
  return {
    has: (frameId: string): boolean => Date.now() - (exposedAt[keyOf(frameId)] ?? 0) < nightHours * 3_600_000,
    add: (frameId: string): void => {
      useNightRun.setState({ exposedAt: { ...exposedAt, [keyOf(frameId)]: Date.now() } });
    },
  };
};
