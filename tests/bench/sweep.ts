import type { SweepTimes } from './page/sweep.ts';

export const sweepLine = ({ tileMs, refinedMs, sampleMs }: SweepTimes): string =>
  `sweep 12 x 3: ${tileMs.toFixed(1)} ms a tile, ${(tileMs / sampleMs).toFixed(3)}x of one full-size sample ` +
  `(960 x 540, ${sampleMs.toFixed(0)} ms); with 16 samples ${refinedMs.toFixed(0)} ms a tile, ${(refinedMs / sampleMs).toFixed(2)}x`;
