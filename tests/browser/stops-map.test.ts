import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { bandOf, differenceBands, levelBands, type StopsBands } from '../../app/web/render/stops-bands.ts';
import { stopsFromRatio } from '../../core/units/stops.ts';
import { launch, leave, openPage } from './browser.ts';
import type { Harness } from './harness/main.ts';

/** Every tenth of a stop from 8 under mid-grey to full, but for the borders of bands, where rounding decides. */
const ratios = Array.from({ length: 110 }, (_, i) => -8 + i / 10)
  .filter((stops) => Math.abs(Math.abs(stops % 1) - 0.5) > 0.01)
  .map((stops) => 2 ** stops);

/** Bytes of the band that a number of stops belongs to. */
const bytesOf = ({ first, colours }: StopsBands, value: number): number[] => {
  const at = Math.min(Math.max(bandOf(value) - first, 0), colours.length - 1);
  const colour = colours[at] as string;
  return [1, 3, 5].map((i) => Number.parseInt(colour.slice(i, i + 2), 16));
};

const luma = (colour: string): number => {
  const [r, g, b] = [1, 3, 5].map((i) => Number.parseInt(colour.slice(i, i + 2), 16)) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};

describe('the map of stops', () => {
  let browser: Browser;
  let page: Page;
  beforeAll(async () => {
    browser = await launch();
    ({ page } = await openPage(browser, inject('harnessUrl'), 300, 200));
  });
  afterAll(() => leave(browser));

  const map = (values: number[], others: number[] | null) =>
    page.evaluate(([a, b]) => (window as unknown as { harness: Harness }).harness.map(a, b), [values, others] as const);

  it('gives each level the colour of its nearest whole stop (1 of 255)', async () => {
    const bytes = await map(ratios, null);
    const expected = ratios.flatMap((ratio) => bytesOf(levelBands, stopsFromRatio(ratio)));
    expect(bytes).toHaveLength(expected.length);
    bytes.forEach((byte, i) => {
      expect(Math.abs(byte - (expected[i] as number)), `ratio ${ratios[Math.floor(i / 3)]}`).toBeLessThanOrEqual(1);
    });
  });

  it('gives a picture n stops brighter the colour of +n, and one as bright that of 0', async () => {
    const others = ratios.map(() => 0.25);
    const brighter = [0, 1, 2, 3, 4].map((n) => 0.25 * 2 ** n);
    const bytes = await map(brighter, others.slice(0, brighter.length));
    const expected = [0, 1, 2, 3, 4].flatMap((n) => bytesOf(differenceBands, n));
    bytes.forEach((byte, i) => {
      expect(Math.abs(byte - (expected[i] as number))).toBeLessThanOrEqual(1);
    });
  });

  it('finds no difference where both are dark: under 0.002 of mid-grey, nine stops down, neither counts', async () => {
    const pairs = [
      [0.0019, 0.00002, 0],
      [0, 0.0015, 0],
      [0.008, 0, 2],
      [0.0001, 0.016, -3],
    ] as const;
    const bytes = await map(
      pairs.map(([a]) => a),
      pairs.map(([, b]) => b),
    );
    expect(pairs.map((_, i) => bytes.slice(3 * i, 3 * i + 3))).toEqual(
      pairs.map(([, , band]) =>
        bytesOf(differenceBands, band).map((byte) => expect.toSatisfy((is) => Math.abs(is - byte) <= 1)),
      ),
    );
  });

  it('is readable without colour: levels grow ever lighter, differences the more there is', () => {
    const levels = levelBands.colours.map(luma);
    levels.slice(1).forEach((v, i) => {
      expect(v).toBeGreaterThan((levels[i] as number) + 4);
    });
    const { first, colours } = differenceBands;
    for (let n = 1; n <= -first; n++)
      for (const sign of [1, -1]) {
        const [here, nearer] = [colours[sign * n - first], colours[sign * (n - 1) - first]] as [string, string];
        expect(luma(here)).toBeGreaterThan(luma(nearer) + 10);
      }
  });
});
