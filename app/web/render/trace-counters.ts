import type { JobKind } from './pace.ts';

/** What was traced since the start; tests hold the promises of design.md to these. */
export interface TraceCounters {
  /** Samples of first hits, coarse ones included. */
  hits: number;
  /** Samples of light by label, coarse ones included. */
  light: Record<string, number>;
}

/** Counters of nothing yet. */
export const freshCounters = (): TraceCounters => ({ hits: 0, light: {} });

/** Counts one sample: of first hits, or of the light of that label. */
export const countSample = (counters: TraceCounters, kind: JobKind, label: string): void => {
  if (kind === 'hits') counters.hits++;
  else counters.light[label] = (counters.light[label] ?? 0) + 1;
};
