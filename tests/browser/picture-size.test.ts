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

  it.each([
    [844, 390],
    [932, 410],
    [667, 375],
  ])(
    'is seen whole on a phone held sideways, the plan beside it, and stays while the room scrolls, at %i × %i',
    async (width, height) => {
      const app = await AppPage.open(browser, { samples: 1, width, height });
      const { page } = app;
      const picture = page.locator('.picture');
      const rooms = page.getByRole('navigation', { name: 'Rooms' });
      const [seen, edge] = [await boxOf(picture), (await boxOf(rooms)).y];
      expect(seen.height).toBeGreaterThanOrEqual(160);
      expect(seen.y + seen.height).toBeLessThanOrEqual(edge);
      const plan = await boxOf(page.locator('.ground'));
      expect(plan.x).toBeGreaterThanOrEqual(seen.x + seen.width);
      expect(plan.x + plan.width).toBeLessThanOrEqual(width);
      expect(plan.y).toBeLessThan(seen.y + 10);
      // whole over the rooms, once the upper bar is scrolled off
      expect(plan.height).toBeLessThanOrEqual(edge);
      for (const room of ['Lamps', 'Subjects', 'Exposure', 'Time']) {
        await rooms.getByRole('button', { name: room }).click();
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
        await page.mouse.move(width - 40, edge - 60);
        await page.mouse.wheel(0, 2000);
        const past = Math.min(150, await page.evaluate(() => document.documentElement.scrollHeight - innerHeight));
        await expect.poll(() => page.evaluate(() => scrollY)).toBeGreaterThanOrEqual(past);
        const { y, height: tall } = await boxOf(picture);
        expect(y).toBeGreaterThanOrEqual(0);
        expect(y + tall).toBeLessThanOrEqual(edge);
        await page.evaluate(() => window.scrollTo(0, 0));
      }
      await app.close();
    },
  );

  it('shows two schemes beside each other on a phone held sideways, at one height', async () => {
    const app = await AppPage.open(browser, { samples: 1, width: 844, height: 390 });
    const { page } = app;
    await page.getByRole('button', { name: 'Compare', exact: true }).click();
    const pictureOf = (tile: number) => page.locator('.tile').nth(tile).locator('canvas').first();
    const [first, second] = [await boxOf(pictureOf(0)), await boxOf(pictureOf(1))];
    expect(second.y).toBeCloseTo(first.y, 0);
    expect(second.x).toBeGreaterThanOrEqual(first.x + first.width);
    expect(second.width).toBeCloseTo(first.width, 0);
    await app.close();
  });

  it('keeps its place with 24 schemes: two lines of names under one row of all the rest; the chosen one is seen', async () => {
    const app = await AppPage.open(browser, { samples: 1, width: 1440, height: 900 });
    const { page } = app;
    const duplicate = page.getByRole('button', { name: 'Duplicate', exact: true });
    await page.getByRole('tab').last().click();
    while (await duplicate.isEnabled()) await duplicate.click();
    expect(await page.getByRole('tab').count()).toBe(24);
    const list = await boxOf(page.getByRole('tablist', { name: 'Schemes' }));
    expect((await boxOf(page.locator('.top'))).height).toBeLessThan(130);
    const chosen = await boxOf(page.getByRole('tab', { selected: true }));
    expect(chosen.y).toBeGreaterThanOrEqual(list.y - 1);
    expect(chosen.y + chosen.height).toBeLessThanOrEqual(list.y + list.height + 1);
    expect((await boxOf(page.locator('.picture'))).height).toBeGreaterThan(400);
    // while one is renamed the bar stays as it is
    const tall = (await boxOf(page.locator('.top'))).height;
    await page.getByRole('tab', { selected: true }).press('F2');
    await page.locator('.schemes input').waitFor();
    expect(Math.abs((await boxOf(page.locator('.top'))).height - tall)).toBeLessThan(30);
    await page.keyboard.press('Escape');
    await app.close();
  });
});
