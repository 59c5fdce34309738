import { readFileSync } from 'node:fs';
import { decode } from 'fast-png';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppPage, differingShare } from './app-page.ts';
import { launch, leave } from './browser.ts';

/** Takes the graphics card away from the page, or gives it back. */
const card = (app: AppPage, what: 'loseContext' | 'restoreContext') =>
  app.page.evaluate((call) => {
    const own = window as { lose?: WEBGL_lose_context | null };
    // it comes back here, however slow this machine is
    window.lampfallPatience = 600_000;
    // a lost context tells of no extension
    own.lose ??= window.lampfallCard?.().getContext('webgl2')?.getExtension('WEBGL_lose_context') ?? null;
    own.lose?.[call]();
  }, what);

/** Brightest byte of each of the tiles, and the sum of all its bytes. */
const tilesOf = (app: AppPage) =>
  app.page.evaluate(() =>
    [...document.querySelectorAll<HTMLCanvasElement>('.cell canvas')].map((canvas) => {
      const bytes = canvas.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height).data ?? [];
      let [most, sum] = [0, 0];
      for (let i = 0; i < bytes.length; i++) {
        sum += bytes[i] as number;
        if (i % 4 < 3) most = Math.max(most, bytes[i] as number);
      }
      return { most, sum };
    }),
  );

describe('the graphics card is lost', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => leave(browser));

  it('in the middle of a sweep: it waits, what was shown stays, and all of it is there when the card is back', async () => {
    const app = await AppPage.open(browser, { samples: 1, isOwn: true });
    await app.settled();
    await app.page.getByRole('button', { name: 'Sweep', exact: true }).click();
    await app.page.getByRole('button', { name: 'Start', exact: true }).click();
    const words = () => app.page.evaluate(() => document.querySelector('.sweep-progress span')?.textContent ?? '');
    await app.page.waitForFunction(() =>
      /^([89]|1\d) of 36/.test(document.querySelector('.sweep-progress span')?.textContent ?? ''),
    );
    await card(app, 'loseContext');
    await app.page.getByText('The graphics card was lost').waitFor();
    const shown = Number(/^\d+/.exec(await words())?.[0]);
    expect(shown).toBeLessThan(36);
    const before = await tilesOf(app);
    expect(before.slice(0, shown).every(({ most }) => most > 20)).toBe(true);
    const { counters } = await app.probe();
    await app.page.waitForTimeout(1200);
    const probe = await app.probe();
    expect(probe.isConverged).toBe(false);
    expect(probe.counters).toEqual(counters);
    expect(Number(/^\d+/.exec(await words())?.[0])).toBe(shown);
    await card(app, 'restoreContext');
    await app.page.waitForFunction(() => !document.querySelector('.sweep-progress'), undefined, { timeout: 60_000 });
    const after = await tilesOf(app);
    expect(after).toHaveLength(36);
    expect(after.every(({ most }) => most > 20)).toBe(true);
    expect(after.slice(0, shown)).toEqual(before.slice(0, shown));
    expect(new Set(after.map(({ sum }) => sum)).size).toBe(36);
    expect(await app.page.getByText('The graphics card was lost').count()).toBe(0);
    await app.close();
  });

  it('while a sheet is developed: Cancel works, and else the file waits and is the same as without a loss', async () => {
    const app = await AppPage.open(browser, { samples: 1, height: 800, isOwn: true });
    const stones = JSON.parse(readFileSync('assets/setups/three-stones.json', 'utf8'));
    await app.openText('three.json', JSON.stringify({ ...stones, schemes: stones.schemes.slice(0, 3) }));
    await app.page.getByRole('button', { name: 'Compare', exact: true }).click();
    await app.settled();
    await expect.poll(() => app.page.locator('.tile-numbers dl').count(), { timeout: 30_000 }).toBe(3);
    await app.page.getByText('Save or print').click();
    const bar = app.page.getByRole('progressbar');
    const save = app.page.getByRole('button', { name: 'Save PNG' });
    let files = 0;
    app.page.on('download', () => files++);

    await card(app, 'loseContext');
    await save.click();
    await bar.waitFor();
    await app.page.getByRole('group', { name: 'Sheet' }).getByRole('button', { name: 'Cancel' }).click();
    await bar.waitFor({ state: 'detached' });

    await save.click();
    await app.page.waitForTimeout(1000);
    expect(await bar.count()).toBe(1);
    expect(files).toBe(0);
    await card(app, 'restoreContext');
    // lost once more in the middle of the work
    await expect.poll(() => bar.getAttribute('value').then(Number), { timeout: 60_000 }).toBeGreaterThan(0);
    await card(app, 'loseContext');
    await app.page.waitForTimeout(800);
    expect(files).toBe(0);
    const pixelsAfter = async (act: () => Promise<void>) => {
      const [download] = await Promise.all([app.page.waitForEvent('download', { timeout: 120_000 }), act()]);
      return decode(readFileSync(await download.path())).data as Uint8Array;
    };
    const through = await pixelsAfter(() => card(app, 'restoreContext'));
    await app.page.getByText('Save or print').click();
    const plain = await pixelsAfter(() => save.click());
    expect(differingShare(plain, through)).toBe(0);
    await app.close();
  });
});
