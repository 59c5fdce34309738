import type { Browser, Locator } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppPage } from './app-page.ts';
import { launch, leave } from './browser.ts';

const boxOf = async (of: Locator) => (await of.boundingBox()) ?? expect.fail('not on the page');

describe('the picture and what stands under it', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => leave(browser));

  it.each([
    [1440, 900],
    [1280, 800],
  ])('is of one size whatever frame is shown, with two cautions in sight, at %i × %i', async (width, height) => {
    const app = await AppPage.open(browser, { samples: 1, width, height });
    const { page } = app;
    const iso = page.getByRole('group', { name: /^Camera settings/ }).getByLabel('ISO', { exact: true });
    await iso.fill('25600');
    await iso.press('Enter');
    const second = page.locator('.cautions li').nth(1);
    await second.waitFor();
    const edge = (await boxOf(page.locator('.time-line'))).y;
    const sizes = [];
    for (const name of ['Sky', 'Painted', 'Blend']) {
      await page
        .getByRole('group', { name: 'What the viewfinder shows' })
        .getByRole('button', { name, exact: true })
        .click();
      sizes.push(await boxOf(page.locator('.picture')));
      const { y, height: tall } = await boxOf(second);
      expect(y + tall).toBeLessThanOrEqual(edge);
    }
    expect(new Set(sizes.map((size) => `${size.width} × ${size.height}`)).size).toBe(1);
    // the largest thing on the page
    expect(sizes[0]?.height).toBeGreaterThan(height / 2);
    await page.setViewportSize({ width, height: 420 });
    await expect.poll(async () => (await boxOf(page.locator('.picture'))).height).toBeGreaterThanOrEqual(160);
    await app.close();
  });

  it('is seen whole on a phone held sideways', async () => {
    const app = await AppPage.open(browser, { samples: 1, width: 844, height: 390 });
    const picture = await boxOf(app.page.locator('.picture'));
    const rooms = await boxOf(app.page.getByRole('navigation', { name: 'Rooms' }));
    expect(picture.height).toBeGreaterThanOrEqual(160);
    expect(picture.y + picture.height).toBeLessThanOrEqual(rooms.y);
    await app.close();
  });
});
