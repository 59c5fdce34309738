import { readFileSync } from 'node:fs';
import { type DecodedPng, decode } from 'fast-png';
import type { Browser, Download } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { SheetLayout } from '../../app/web/sheets/sheet-layout.ts';
import { AppPage } from './app-page.ts';
import { launch, leave } from './browser.ts';

const stones = JSON.parse(readFileSync('assets/setups/three-stones.json', 'utf8'));
// under a plain sky, whose even blue shows where the pictures are
const threeSchemes = JSON.stringify({
  ...stones,
  place: { ...stones.place, sky: null },
  schemes: stones.schemes.slice(0, 3),
});

/** The compare room with the stones' first three schemes and the unlit tile. */
const openCompare = async (browser: Browser): Promise<AppPage> => {
  const app = await AppPage.open(browser, { samples: 1, height: 800 });
  await app.openText('three.json', threeSchemes);
  await app.page.getByRole('button', { name: 'Compare', exact: true }).click();
  await app.settled();
  await expect.poll(() => app.page.locator('.tile-numbers dl').count(), { timeout: 30_000 }).toBe(3);
  await app.page.getByText('Save or print').click();
  return app;
};

const setWidth = async (app: AppPage, width: number) => {
  const field = app.page.getByLabel('Width');
  await field.fill(String(width));
  await field.press('Enter');
};

const save = async (app: AppPage): Promise<Download> => {
  const [download] = await Promise.all([
    app.page.waitForEvent('download', { timeout: 120_000 }),
    app.page.getByRole('button', { name: 'Save PNG' }).click(),
  ]);
  return download;
};

/** Red, green and blue of a box, every third pixel of every third row. */
const pixelsIn = ({ data, width, channels }: DecodedPng, box: SheetLayout['cells'][number]['picture']): number[] => {
  const values: number[] = [];
  for (let y = box.y; y < box.y + box.height; y += 3)
    for (let x = box.x; x < box.x + box.width; x += 3)
      for (let c = 0; c < 3; c++) values.push(data[(y * width + x) * channels + c] as number);
  return values;
};

const differing = (a: readonly number[], b: readonly number[]) =>
  a.filter((v, i) => Math.abs(v - (b[i] as number)) > 6).length / a.length;

/** Runs of at least so many that are in, as [start, length]. */
const runsOf = (line: readonly boolean[], least: number): [number, number][] => {
  const runs: [number, number][] = [];
  let start = -1;
  [...line, false].forEach((isIn, i) => {
    if (isIn && start < 0) start = i;
    if (isIn || start < 0) return;
    if (i - start >= least) runs.push([start, i - start]);
    start = -1;
  });
  return runs;
};

describe('sheets out of the page', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => leave(browser));

  it('a PNG has the width that was chosen; its four pictures are there in two columns and differ from each other', async () => {
    const app = await openCompare(browser);
    await setWidth(app, 900);
    const download = await save(app);
    expect(download.suggestedFilename()).toBe('three-standing-stones-compare.png');
    const png = decode(readFileSync(await download.path()));
    expect(png.width).toBe(900);
    const at = (x: number, y: number) => {
      const from = (y * png.width + x) * png.channels;
      return [...png.data.slice(from, from + 3)];
    };
    // the page's ground, --ground in look.css
    expect(at(1, 1)).toEqual([0x0f, 0x10, 0x12]);
    const isSky = (x: number, y: number) => {
      const [red = 0, , blue = 0] = at(x, y);
      return blue - red > 8;
    };
    // the night sky is the only blue on a sheet: rows of it, then columns of it in each row
    const isSkyRow = Array.from({ length: png.height }, (_, y) => {
      let count = 0;
      for (let x = 0; x < png.width; x++) if (isSky(x, y)) count++;
      return count > png.width / 4;
    });
    const rows = runsOf(isSkyRow, 40);
    expect(rows).toHaveLength(2);
    const pictures = rows.flatMap(([y]) => {
      const line = Array.from({ length: png.width }, (_, x) => isSky(x, y + 4));
      return runsOf(line, 100).map(([x, width]) => ({ x, y, width, height: Math.round(width / 1.5) }));
    });
    expect(pictures).toHaveLength(4);
    const [first] = pictures;
    for (const { x, y, width, height } of pictures) {
      expect(width).toBe(first?.width);
      expect(width).toBeGreaterThan(900 * 0.44);
      expect(x + width).toBeLessThan(900);
      expect(y + height).toBeLessThan(png.height);
    }
    // two rows of a picture with its plan (0.4 of its width) under it, heads, title: about 2 (1/1.5 + 0.4) widths and some
    const wide = first?.width ?? 0;
    expect(png.height).toBeGreaterThan(2 * (wide / 1.5 + 0.4 * wide));
    expect(png.height).toBeLessThan(3 * (wide / 1.5 + 0.4 * wide));
    const seen = pictures.map((box) => pixelsIn(png, box));
    seen.forEach((a, i) => {
      // the same picture twice differs nowhere; the thinnest rim is some 2 % of one without lamps
      for (const b of seen.slice(i + 1)) expect(differing(a, b)).toBeGreaterThan(0.005);
    });
    await expect.poll(() => app.page.getByRole('status').innerText()).toContain(`900 × ${png.height} px`);
    // the card's canvas is given back: it is as large as the page's tiles again
    await app.settled();
    const [card, tile] = await app.page.evaluate(() => [
      window.lampfallCard?.().width ?? 0,
      Math.max(...[...document.querySelectorAll<HTMLCanvasElement>('canvas.screen')].map(({ width: w }) => w)),
    ]);
    expect(tile).toBeLessThan(first?.width ?? 0);
    expect(card).toBe(tile);
    expect(app.faults).toEqual([]);
    await app.close();
  });

  it('a sheet can be called off, leaves no work running, and the tiles are there again', async () => {
    const app = await openCompare(browser);
    await setWidth(app, 4096);
    await app.page.getByRole('button', { name: 'Save PNG' }).click();
    await app.page.getByRole('progressbar').waitFor();
    await app.page.getByRole('group', { name: 'Sheet' }).getByRole('button', { name: 'Cancel' }).click();
    await app.page.getByRole('progressbar').waitFor({ state: 'detached' });
    const { counters } = await app.settled();
    await app.page.waitForTimeout(1000);
    expect((await app.probe()).counters).toEqual(counters);
    expect(await app.page.getByRole('button', { name: 'Save PNG' }).isEnabled()).toBe(true);
    expect(app.faults).toEqual([]);
    await app.close();
  });

  it('on paper there is the sheet alone: pictures, plans and numbers, black on white, no controls', async () => {
    const app = await openCompare(browser);
    await app.page.evaluate(() => {
      window.print = () => document.documentElement.setAttribute('data-was-printed', '');
    });
    await app.page.getByRole('button', { name: 'Print', exact: true }).click();
    await app.page.locator('html[data-was-printed]').waitFor({ state: 'attached', timeout: 120_000 });
    await app.page.emulateMedia({ media: 'print' });
    const sheet = app.page.locator('.print-sheet');
    expect(await sheet.locator('figcaption').allInnerTexts()).toEqual([
      ...stones.schemes.slice(0, 3).map(({ name }: { name: string }) => name),
      'Unlit',
    ]);
    expect(await sheet.locator('img').count()).toBe(4);
    expect(await sheet.locator('svg.mini-plan').count()).toBe(3);
    await expect.poll(() => sheet.innerText()).toContain('3:00 · 6.0 m');
    const shown = await app.page.locator('button:visible, input:visible, select:visible, summary:visible').count();
    expect(shown).toBe(0);
    const { data, width, height, channels } = decode(await app.page.screenshot({ fullPage: true }));
    let white = 0;
    for (let i = 0; i < data.length; i += channels) if (Math.min(...data.slice(i, i + 3)) > 250) white++;
    expect(white / (width * height)).toBeGreaterThan(0.25);
    await app.keepScreenshot('compare-on-paper');
    expect((await app.page.pdf({ format: 'A4', landscape: true })).subarray(0, 5).toString()).toBe('%PDF-');
    // the browser says when paper is done with
    await app.page.emulateMedia({ media: 'screen' });
    await app.page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
    await sheet.waitFor({ state: 'detached' });
    expect(app.faults).toEqual([]);
    await app.close();
  });
});
