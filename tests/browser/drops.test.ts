import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { dependencies } from '../../package.json';
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

  it('the list of subjects opens within what is seen, over its button where there is no room under it', async () => {
    const { page } = app;
    const add = page.locator('.add-subject');
    // at the lower edge of what is seen
    await add.evaluate((each) => each.scrollIntoView({ block: 'end' }));
    await add.locator('summary').focus();
    const pageHeight = () => page.evaluate(() => document.documentElement.scrollHeight);
    const before = await pageHeight();
    await page.keyboard.press('Enter');
    // placed once it is open
    await expect.poll(pageHeight).toBe(before);
    const list = await add.locator('.drop-list').boundingBox();
    const strip = await page.locator('.time-line').boundingBox();
    expect(list?.y).toBeGreaterThanOrEqual(0);
    expect((list?.y ?? 0) + (list?.height ?? 0)).toBeLessThanOrEqual(strip?.y ?? 0);
    await page.keyboard.press('Escape');
  });

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
  });

  it('the menu says which version it is, what changed, and the licence of every library that is built in', async () => {
    const { page } = app;
    await page.locator('.menu summary').click();
    await page.getByRole('button', { name: 'About, changes, licences' }).click();
    const dialog = page.getByRole('dialog', { name: /^Lampfall \d/ });
    await dialog.getByText('What changed').click();
    expect(await dialog.locator('pre').first().innerText()).toMatch(/^\d+\.\d+\.\d+/);
    await dialog.getByText('Licences of what is built in').click();
    const licences = dialog.locator('pre').last();
    await expect.poll(() => licences.innerText()).toContain('SIL OPEN FONT LICENSE');
    const text = await licences.innerText();
    // tsx runs the terminal's commands and is no part of the page
    const built = Object.keys(dependencies).filter((name) => name !== 'tsx');
    expect(built.filter((name) => !text.includes(`\n${name} `) && !text.startsWith(`${name} `))).toEqual([]);
    await page.keyboard.press('Escape');
    await expect.poll(() => dialog.count()).toBe(0);
    expect(app.faults).toEqual([]);
    await app.close();
  });
});
