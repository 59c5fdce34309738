import { readFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { parseSetup } from '../../core/setup/parse-setup.ts';
import { tracePicture } from '../../core/trace/picture.ts';
import { buildWorld } from '../../core/world/world.ts';
import { launch, openPage } from './browser.ts';
import { everyKindSetup } from './every-kind.ts';
import type { Harness } from './harness/main.ts';

const size = { width: 160, height: 90, samples: 8 };

/** Relative differences of pixels above 1 % of the picture's maximum, sorted. */
const differences = (gpu: ArrayLike<number>, cpu: Float64Array): number[] => {
  const floor = 0.01 * cpu.reduce((most, v) => Math.max(most, v), 0);
  const result: number[] = [];
  cpu.forEach((v, i) => {
    if (v > floor) result.push(Math.abs((gpu[i] as number) - v) / v);
  });
  return result.sort((a, b) => a - b);
};
const percentile = (sorted: number[], share: number) =>
  sorted[Math.min(Math.floor(sorted.length * share), sorted.length - 1)] as number;

describe('GPU layers against the CPU reference: median <= 2 %, 95th percentile <= 8 % over 1 % of the maximum', () => {
  let browser: Browser;
  let page: Page;
  beforeAll(async () => {
    browser = await launch();
    ({ page } = await openPage(browser, inject('harnessUrl'), 300, 200));
  });
  afterAll(() => browser.close());

  const compare = async (text: string, schemeId: string, frameId: string, fewest: number) => {
    const setup = parseSetup(text);
    const scheme = setup.schemes.find(({ id }) => id === schemeId);
    if (!scheme) throw new Error(`no scheme ${schemeId}`);
    const world = buildWorld(setup, scheme);
    const frame = world.frames.find(({ id }) => id === frameId);
    if (!frame) throw new Error(`no frame ${frameId}`);
    const cpu = tracePicture(world, frame, size);
    const gpu = await page.evaluate(
      ([setupText, scheme, frame, w, h, s]) =>
        (window as unknown as { harness: Harness }).harness.picture(setupText, scheme, frame, w, h, s),
      [text, schemeId, frameId, size.width, size.height, size.samples] as const,
    );
    const sorted = differences(gpu, cpu);
    const [median, high] = [percentile(sorted, 0.5), percentile(sorted, 0.95)];
    console.log(
      `${setup.id} ${schemeId} ${frameId}: ${sorted.length} values, median ${(100 * median).toFixed(4)} %, 95th ${(100 * high).toFixed(4)} %`,
    );
    expect(sorted.length).toBeGreaterThan(fewest);
    expect(median).toBeLessThanOrEqual(0.02);
    expect(high).toBeLessThanOrEqual(0.08);
  };

  for (const sample of ['three-stones', 'drystone-wall']) {
    const text = readFileSync(`assets/setups/${sample}.json`, 'utf8');
    for (const { id } of parseSetup(text).schemes)
      for (const frameId of ['painted', 'sky'])
        it(`${sample}, scheme ${id}, frame ${frameId}`, () => compare(text, id, frameId, 300));
  }

  const everyKind = JSON.stringify(everyKindSetup());
  for (const frameId of ['torch', 'flood', 'panel', 'lantern', 'tube', 'moving', 'sixteen'])
    it(`every kind of part under moonlight, frame ${frameId}`, () => compare(everyKind, 's', frameId, 1000));
});
