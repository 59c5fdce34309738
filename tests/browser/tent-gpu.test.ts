import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { initialValues, subjectFromKit } from '../../core/kits/kit.ts';
import { tent } from '../../core/kits/tent.ts';
import { launch, leave, openPage } from './browser.ts';
import { onBoth } from './on-both.ts';

const size = { width: 120, height: 80, samples: 4 };

/** A tent of thin shells far out, where 32-bit numbers are coarse, with a lantern in it. */
const setupAt = (east: number, north: number) =>
  JSON.stringify({
    format: 'lampfall-setup',
    version: 3,
    id: 'tent',
    name: 'Tent',
    subjects: [
      subjectFromKit(tent, { ...initialValues(tent), door: 1 }, 1, {
        id: 'tent',
        name: 'Tent',
        position: [east, north, 0],
        turnDegrees: 30,
      }),
    ],
    camera: { position: [east + 0.5, north - 4, 0.9], aim: [east, north, 0.5], focalLengthMm: 28 },
    lamps: [{ kind: 'point', id: 'lamp', name: 'Lamp', output: { from: 'lumens', lumens: 5 } }],
    schemes: [
      {
        id: 's',
        name: 'S',
        frames: [
          {
            id: 'f',
            name: 'F',
            seconds: 8,
            passes: [
              {
                id: 'p',
                name: 'P',
                lampId: 'lamp',
                off: 5,
                waypoints: [{ position: [east, north, 0.4], aim: [east, north - 1, 0.4] }],
              },
            ],
          },
        ],
      },
    ],
  });

const mean = (values: ArrayLike<number>) => Array.from(values).reduce((sum, v) => sum + v, 0) / values.length;

describe('a tent that glows: GPU against the CPU reference, median <= 2 %, mean <= 2 %', () => {
  let browser: Browser;
  let page: Page;
  beforeAll(async () => {
    browser = await launch();
    ({ page } = await openPage(browser, inject('harnessUrl'), 300, 200));
  });
  afterAll(() => leave(browser));

  it.each([
    [0, 0],
    [-140, 90],
  ])('at %d m east, %d m north', async (east, north) => {
    const text = setupAt(east, north);
    const { gpu, cpu } = await onBoth(page, { text, schemeId: 's', frameId: 'f' }, size);
    const floor = 0.05 * mean(cpu);
    const sorted = Array.from(cpu)
      .map((v, i) => [v, gpu[i] as number] as const)
      .filter(([v, other]) => Math.max(v, other) > floor)
      .map(([v, other]) => Math.abs(other - v) / Math.max(v, 1e-12))
      .sort((a, b) => a - b);
    const median = sorted[Math.floor(sorted.length / 2)] as number;
    const whole = Math.abs(mean(gpu) / mean(cpu) - 1);
    console.log(`${sorted.length} values, median ${(100 * median).toFixed(3)} %, mean ${(100 * whole).toFixed(3)} %`);
    // the tent fills a fifth of the picture at least, and glows all over
    expect(sorted.length).toBeGreaterThan(size.width * size.height * 3 * 0.2);
    expect(median).toBeLessThanOrEqual(0.02);
    expect(whole).toBeLessThanOrEqual(0.02);
  });
});
