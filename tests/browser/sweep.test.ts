import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppPage } from './app-page.ts';
import { launch, leave } from './browser.ts';

describe('the sweep room, three stones, 12 places at 3 heights', () => {
  let browser: Browser;
  let app: AppPage;
  beforeAll(async () => {
    browser = await launch();
    app = await AppPage.open(browser, { width: 1000, height: 640, samples: 1, pixelRatio: 1 });
    await app.settled();
  });
  afterAll(() => leave(browser));

  const button = (name: string) => app.page.getByRole('button', { name, exact: true });
  const tile = (id: string) => app.page.locator(`[data-cell="${id}"]`);
  const large = () => app.page.locator('.open-cell');
  const progress = () => app.page.evaluate(() => document.querySelector('.sweep-progress span')?.textContent ?? null);
  /** Brightest byte and a sum of all, of every tile's canvas. */
  const tiles = () =>
    app.page.evaluate(() =>
      [...document.querySelectorAll<HTMLCanvasElement>('.cell canvas')].map((canvas) => {
        const bytes =
          canvas.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height).data ?? new Uint8ClampedArray();
        return {
          most: bytes.reduce((most, v, i) => (i % 4 < 3 ? Math.max(most, v) : most), 0),
          sum: bytes.reduce((sum, v) => sum + v, 0),
        };
      }),
    );
  const finished = () =>
    app.page.waitForFunction(() => !document.querySelector('.sweep-progress'), undefined, { timeout: 60_000 });

  it('traces nothing before it is started', async () => {
    const before = await app.probe();
    await button('Sweep').click();
    await app.page.waitForTimeout(500);
    expect((await app.probe()).counters).toEqual(before.counters);
    expect(await tiles()).toEqual([]);
  });

  it('cancelled half-way it leaves no work running; what was traced stays', async () => {
    await button('Start').click();
    await app.page.waitForFunction(() =>
      /^(1[2-9]|2\d) of 36/.test(document.querySelector('.sweep-progress span')?.textContent ?? ''),
    );
    const developed = await button('Cancel').evaluate((cancel: HTMLButtonElement) => {
      cancel.click();
      return window.lampfallProbe?.().developed ?? 0;
    });
    // a cell that is being read is read to its end
    await app.page.waitForTimeout(700);
    const numbers = () => app.page.locator('.cell-line').allTextContents();
    const [probe, read] = [await app.probe(), await numbers()];
    expect(probe.isConverged).toBe(true);
    // one draw may have been under way, one comes of the cell that was being read, and the one of nothing; the tiles that
    // are there are not developed again
    expect(probe.developed).toBeLessThanOrEqual(developed + 3);
    const missing = await app.page.getByText('not traced', { exact: true }).count();
    expect(missing).toBeGreaterThan(0);
    expect(missing).toBeLessThanOrEqual(24);
    const shown = (await tiles()).slice(0, 36 - missing);
    expect(shown.every(({ most }) => most > 20)).toBe(true);
    await app.page.waitForTimeout(2000);
    expect(await app.probe()).toEqual(probe);
    expect(await numbers()).toEqual(read);
    // on a sheet there is what was traced, and nothing else
    await app.page.evaluate(() => {
      window.print = () => document.documentElement.setAttribute('data-was-printed', '');
    });
    await app.page.getByText('Save or print').click();
    await button('Print').click();
    await app.page.locator('html[data-was-printed]').waitFor({ state: 'attached', timeout: 120_000 });
    expect(await app.page.locator('.print-sheet img').count()).toBe(36 - missing);
    await app.page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
    await app.page.locator('.print-sheet').waitFor({ state: 'detached' });
  });

  it('finishes, tells how far it is, and every picture is another', async () => {
    await button('Start').click();
    await app.page.locator('.sweep-progress').waitFor();
    const told = new Set<string>();
    for (let words = await progress(); words !== null; words = await progress()) {
      told.add(words);
      await app.page.waitForTimeout(60);
    }
    const counts = [...told].flatMap((words) => Number(/^(\d+) of 36 pictures · \d+ %$/.exec(words)?.[1] ?? []));
    expect(new Set(counts).size).toBeGreaterThan(2);
    expect(counts).toEqual(counts.toSorted((a, b) => a - b));
    const pictures = await tiles();
    expect(pictures).toHaveLength(36);
    expect(pictures.every(({ most }) => most > 20)).toBe(true);
    expect(new Set(pictures.map(({ sum }) => sum)).size).toBe(36);
    expect(await app.page.locator('.cell-line').count()).toBeGreaterThanOrEqual(36);
    await app.keepScreenshot('sweep');
  });

  it('a tile pressed is seen large, and moves the lamp there; undo brings it back', async () => {
    const at = () => app.lamp().getAttribute('aria-label');
    const before = await at();
    await tile('angles-1-3').click();
    await large()
      .getByText('no light on the side you see')
      .or(large().getByText(/stops ·/))
      .first()
      .waitFor();
    await large().getByRole('button', { name: 'Move the lamp here' }).click();
    expect(before).toContain('3:00');
    expect(await at()).toContain('9:00');
    expect(await tile('angles-1-3').locator('.cell-present').innerText()).toBe('now');
    // the sheet is still that of this setup
    expect(await button('Again').count()).toBe(0);
    await button('Undo').click();
    expect(await at()).toBe(before);
  });

  it('a tile becomes a scheme of its own; undo takes it away', async () => {
    const tabs = app.page.getByRole('tab');
    const count = await tabs.count();
    await large().getByRole('button', { name: 'Make a scheme of it' }).click();
    expect(await tabs.count()).toBe(count + 1);
    expect(await tabs.nth(1).textContent()).toMatch(/^Side · 9:00 · hip/);
    await button('Undo').click();
    expect(await tabs.count()).toBe(count);
  });

  it('by keyboard: arrows go through the tiles, Enter opens, Escape closes', async () => {
    await large().getByRole('button', { name: 'Close' }).click();
    const focused = () => app.page.evaluate(() => document.activeElement?.getAttribute('data-cell'));
    expect(await focused()).toBe('angles-1-3');
    const { keyboard } = app.page;
    await keyboard.press('ArrowRight');
    expect(await focused()).toBe('angles-1-4');
    expect(await large().count()).toBe(0);
    await keyboard.press('Enter');
    await large().waitFor();
    await keyboard.press('Home');
    expect(await focused()).toBe('angles-0-0');
    expect(await large().getAttribute('aria-label')).toContain('6:00');
    await keyboard.press('Escape');
    expect(await large().count()).toBe(0);
    expect(await focused()).toBe('angles-0-0');
    // one stop of the tabulator key for the whole sheet
    expect(await app.page.locator('.cell[tabindex="0"]').count()).toBe(1);
  });

  it('says that the setup has changed since, keeps the tiles, and does it again when asked', async () => {
    const steps = app.page.getByLabel('Steps', { exact: true });
    await steps.fill('40');
    await steps.press('Enter');
    expect(await app.page.getByRole('alert').textContent()).toContain('1 to 36');
    await steps.fill('4');
    await steps.press('Enter');
    const heights = app.page.getByLabel('Heights', { exact: true });
    await heights.fill('0.3');
    await heights.press('Enter');
    await button('Start').click();
    await finished();
    const before = await tiles();
    expect(before).toHaveLength(4);
    await app.page.getByLabel('Level', { exact: true }).fill('40');
    await app.page.getByLabel('Level', { exact: true }).press('Enter');
    await app.page.getByText('The setup has changed since').waitFor();
    expect(await tiles()).toEqual(before);
    await button('Again').click();
    await finished();
    expect(await button('Again').count()).toBe(0);
    const after = await tiles();
    expect(after.every(({ sum }, i) => sum < (before[i]?.sum ?? 0))).toBe(true);
  });

  it('leaving the room and coming back shows the pictures again without tracing', async () => {
    const before = [await tiles(), (await app.probe()).counters.light] as const;
    await button('Picture').click();
    await app.settled();
    await button('Sweep').click();
    await app.page.waitForTimeout(1500);
    expect((await tiles()).map(({ sum }) => sum)).toEqual(before[0].map(({ sum }) => sum));
    const light = (await app.probe()).counters.light;
    const own = (counters: Record<string, number>) =>
      Object.entries(counters).filter(([label]) => label.startsWith('sweep/'));
    expect(own(light)).toEqual(own(before[1]));
    expect(app.faults).toEqual([]);
  });
});
