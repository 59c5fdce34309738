import type { Span } from '../../../core/sky/night-spans.ts';

/** All of the stretches together, seconds. */
export const totalSeconds = (spans: readonly Span[]): number =>
  spans.reduce((sum, { startMilliseconds, endMilliseconds }) => sum + (endMilliseconds - startMilliseconds) / 1000, 0);
