import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppPage } from './app-page.ts';
import { launch, leave } from './browser.ts';

describe('lists that drop down, and tiles that are pressed', () => {
  let browser: Browser;
  let app: AppPage;
  beforeAll(async () => {
    browser = await launch();
    app = await AppPage.open(browser, { samples: 1 });
    await app.page.getByRole('button', { name: 'Compare', exact: true }).click();
    await app.page.locator('.tile').first().waitFor();
  });
  afterAll(() => leave(browser));

  it.each(['.menu', '.drop'])(
    '%s closes by Escape, with the focus back on it, and by a press on what takes no focus',
    async (selector) => {
      const { page } = app;
      const list = page.locator(selector).first();
      const isOpen = () => list.evaluate((each) => (each as HTMLDetailsElement).open);
      const hasFocus = () => list.locator('summary').evaluate((summary) => summary === document.activeElement);
      const open = () => list.locator('summary').click();
      await open();
      expect(await isOpen()).toBe(true);
      await page.keyboard.press('Tab');
      expect(await hasFocus()).toBe(false);
      await page.keyboard.press('Escape');
      expect(await isOpen()).toBe(false);
      expect(await hasFocus()).toBe(true);
      await open();
      // the page's corner
      await page.mouse.click(996, 4);
      expect(await isOpen()).toBe(false);
      expect(app.faults).toEqual([]);
    },
  );

  it('a press that leaves a tile’s head and is let go there moves nothing afterwards', async () => {
    const { page } = app;
    const head = await page.locator('.tile[data-scheme="side"] .tile-head').boundingBox();
    if (!head) throw new Error('no head');
    // on the head's empty part, 2 px above its lower edge
    const [x, y] = [head.x + 0.5 * head.width, head.y + head.height];
    await page.mouse.move(x, y - 2);
    await page.mouse.down();
    await page.mouse.move(x, y + 3);
    await page.mouse.up();
    await page.mouse.move(x - 15, y - 6, { steps: 4 });
    await page.mouse.move(x - 30, y - 8, { steps: 4 });
    expect(await page.locator('.tile[data-drag]').count()).toBe(0);
    expect(app.faults).toEqual([]);
    await page.close();
  });
});
