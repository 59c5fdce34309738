import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { parseSetup } from '../../core/setup/parse-setup.ts';
import { launch, leave, openPage } from './browser.ts';
import { everyFinishSetup } from './every-finish.ts';
import { onBoth } from './on-both.ts';

const fullSize = { width: 112, height: 63, samples: 4 };
const smallSize = { width: 64, height: 36, samples: 4 };

/** Relative differences of values that are above 1 % of the maximum in either picture, sorted. */
const differences = (gpu: ArrayLike<number>, cpu: Float64Array, floor: number): number[] => {
  const result: number[] = [];
  cpu.forEach((v, i) => {
    const other = gpu[i] as number;
    if (Math.max(v, other) > floor) result.push(Math.abs(other - v) / Math.max(v, 1e-12));
  });
  return result.sort((a, b) => a - b);
};
const percentile = (sorted: number[], share: number) =>
  sorted[Math.min(Math.floor(sorted.length * share), sorted.length - 1)] as number;
const mean = (values: ArrayLike<number>) => Array.from(values).reduce((sum, v) => sum + v, 0) / values.length;

describe('shine, mirrors and cloth: GPU against the CPU reference, median <= 2 %, 95th percentile <= 8 %', () => {
  let browser: Browser;
  let page: Page;
  beforeAll(async () => {
    browser = await launch();
    ({ page } = await openPage(browser, inject('harnessUrl'), 300, 200));
  });
  afterAll(() => leave(browser));

  const variants = {
    'direct light': { settings: {}, frames: null, size: fullSize },
    // most of the light has bounced here: a bounce that is missing or wrong on one side can't hide
    'two bounces in a white room': {
      settings: { bounces: 2, inRoom: true },
      frames: ['torch', 'lantern', 'behind'],
      size: smallSize,
    },
    'one bounce through the open lens': {
      settings: { bounces: 1, drawn: { focusBlur: true } },
      frames: ['tube', 'tent'],
      size: smallSize,
    },
  };
  for (const [variant, { settings, frames, size }] of Object.entries(variants)) {
    const text = JSON.stringify(everyFinishSetup(settings));
    const all = parseSetup(text).schemes[0]?.frames.map(({ id }) => id) ?? [];
    for (const id of frames ?? all)
      it(`${variant}, frame ${id}`, async () => {
        const { gpu, cpu } = await onBoth(page, { text, schemeId: 's', frameId: id }, size);
        // a bare lamp or its highlight in the picture outshines all else: what counts is the mean
        const sorted = differences(gpu, cpu, 0.05 * mean(cpu));
        const [median, high] = [percentile(sorted, 0.5), percentile(sorted, 0.95)];
        const whole = Math.abs(mean(gpu) / mean(cpu) - 1);
        console.log(
          `${variant} ${id}: ${sorted.length} values, median ${(100 * median).toFixed(4)} %, 95th ${(100 * high).toFixed(4)} %, mean ${(100 * whole).toFixed(3)} %`,
        );
        expect(sorted.length).toBeGreaterThan(size.width * size.height * 0.3);
        expect(median).toBeLessThanOrEqual(0.02);
        expect(high).toBeLessThanOrEqual(0.08);
        expect(whole).toBeLessThanOrEqual(0.02);
      });
  }
});
