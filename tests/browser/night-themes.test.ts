import { decode } from 'fast-png';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppPage } from './app-page.ts';
import { launch, leave } from './browser.ts';

/** Largest value of each channel on the screen, 0 to 255. */
const most = async ({ page }: AppPage): Promise<[number, number, number]> => {
  const { data, channels, width, height } = decode(await page.screenshot());
  const found: [number, number, number] = [0, 0, 0];
  for (let i = 0; i < width * height; i++)
    for (let c = 0; c < 3; c++) found[c] = Math.max(found[c] as number, data[i * channels + c] as number);
  return found;
};

const choose = async (app: AppPage, name: RegExp) => {
  await app.page.locator('.night-choice > summary').click();
  await app.page.getByRole('group', { name: 'Night theme' }).getByRole('button', { name }).click();
};

describe('night themes', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => leave(browser));

  it('red: no pixel has green or blue, pictures, menus and dialogs too; it is kept when the page is loaded again', async () => {
    const app = await AppPage.open(browser, { samples: 1, width: 920, height: 480 });
    await app.settled();
    const usual = await most(app);
    expect(Math.min(...usual)).toBeGreaterThan(150);
    await choose(app, /^Red/);
    const isRed = async (what: string) => {
      const [red, green, blue] = await most(app);
      expect(red, what).toBeGreaterThan(200);
      expect([green, blue], what).toEqual([0, 0]);
    };
    await isRed('page');
    await app.keepScreenshot('theme-red');
    await app.page.locator('.menu > summary').click();
    await isRed('menu');
    await app.page.getByRole('button', { name: 'Share by link…' }).click();
    await app.page.getByRole('dialog').waitFor();
    await isRed('dialog');
    await app.page.reload();
    await app.page.waitForSelector('.mark');
    await isRed('loaded again');
    expect(await app.page.locator('meta[name=theme-color]').getAttribute('content')).toBe('#000000');

    await choose(app, /^Dim white/);
    const dim = await most(app);
    expect(Math.max(...dim)).toBeLessThanOrEqual(128);
    await app.keepScreenshot('theme-dim');
    await choose(app, /^Usual/);
    await expect.poll(() => most(app)).toEqual(usual);
    expect(app.faults).toEqual([]);
    await app.close();
  });
});
