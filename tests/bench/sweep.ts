import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import type { SweepTimes } from '../browser/harness/bench-sweep.ts';
import type { Harness } from '../browser/harness/main.ts';

/** Sweeps the key of the three stones on the harness page, 12 places at 3 heights, 160 x 90. */
export const sweepTimes = (page: Page): Promise<SweepTimes> =>
  page.evaluate(
    (text) =>
      (window as unknown as { harness: Harness }).harness.sweep(text, {
        schemeId: 'side',
        frameId: 'painted',
        passId: 'key',
      }),
    readFileSync('assets/setups/three-stones.json', 'utf8'),
  );

export const sweepLine = ({ tileMs, refinedMs, sampleMs }: SweepTimes): string =>
  `sweep 12 x 3: ${tileMs.toFixed(1)} ms a tile, ${(tileMs / sampleMs).toFixed(3)}x of one full-size sample ` +
  `(960 x 540, ${sampleMs.toFixed(0)} ms); with 16 samples ${refinedMs.toFixed(0)} ms a tile, ${(refinedMs / sampleMs).toFixed(2)}x`;
