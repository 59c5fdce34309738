import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppPage } from './app-page.ts';
import { launch, leave } from './browser.ts';

const sideways = { width: 740, height: 360 } as const;
const small = { width: 320, height: 640 } as const;

const goTo = (page: Page, room: string) =>
  page.getByRole('navigation', { name: 'Rooms' }).getByRole('button', { name: room }).click();
const scrolledTo = (page: Page) => page.evaluate(() => scrollY);
const topOf = (page: Page, selector: string) =>
  page
    .locator(selector)
    .filter({ visible: true })
    .first()
    .evaluate((each) => each.getBoundingClientRect().top);

describe('a phone', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => leave(browser));

  it.each([sideways, small])(
    'a number that is not taken says why within the window: $width × $height',
    async (size) => {
      const app = await AppPage.open(browser, { samples: 1, ...size });
      const { page } = app;
      let said = 0;
      for (const room of ['Lamps', 'Time']) {
        await goTo(page, room);
        for (const field of await page.locator('input[inputmode="decimal"]').filter({ visible: true }).all()) {
          await field.fill('abc');
          await field.press('Enter');
          const problem = page.locator('.field-problem');
          if ((await problem.count()) === 0) continue;
          const box = await problem.first().boundingBox();
          expect(box?.x).toBeGreaterThanOrEqual(0);
          expect((box?.x ?? 0) + (box?.width ?? 0)).toBeLessThanOrEqual(size.width);
          said++;
          await field.press('Escape');
        }
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(size.width);
      }
      expect(said).toBeGreaterThan(8);
      await app.close();
    },
  );

  it.each([sideways, { width: 390, height: 844 }])(
    'a room opens at its start, under or beside the picture, whatever was scrolled to before: $width × $height',
    async (size) => {
      const app = await AppPage.open(browser, { samples: 1, ...size });
      const { page } = app;
      for (const room of ['Plan', 'Time', 'Cautions']) {
        await goTo(page, 'Lamps');
        await page.evaluate(() => scrollTo(0, document.body.scrollHeight));
        expect(await scrolledTo(page)).toBeGreaterThan(300);
        await goTo(page, room);
        await expect.poll(() => topOf(page, '.viewfinder .picture')).toBeGreaterThanOrEqual(0);
        expect(await scrolledTo(page)).toBeLessThan(200);
      }
      await app.close();
    },
  );

  it('beside a sheet, where there is no picture, a room is gone to', async () => {
    const app = await AppPage.open(browser, { samples: 1, width: 390, height: 844 });
    const { page } = app;
    await page.getByRole('button', { name: 'Compare', exact: true }).click();
    await page.locator('.tile').first().waitFor();
    for (const [room, selector] of [
      ['Lamps', '.slips:not(.subjects, .place)'],
      ['Subjects', '.subjects'],
      ['Plan', '.ground'],
    ] as const) {
      await page.evaluate(() => scrollTo(0, 0));
      await goTo(page, room);
      const edge = await topOf(page, '.switch');
      // the last of them stands as high as the page's end lets it
      await expect.poll(() => topOf(page, selector)).toBeLessThan(edge - 100);
      expect(await topOf(page, selector)).toBeGreaterThanOrEqual(0);
    }
    await app.close();
  });

  it('Tab stops at nothing that lies under the rooms', async () => {
    const app = await AppPage.open(browser, { samples: 1, ...sideways });
    const { page } = app;
    await goTo(page, 'Lamps');
    await page.locator('.slips .slip-head').filter({ visible: true }).first().focus();
    for (let n = 0; n < 40; n++) {
      await page.keyboard.press('Tab');
      const covered = await page.evaluate(() => {
        const focused = document.activeElement;
        if (!focused || focused === document.body || focused.closest('.switch')) return null;
        const { top, bottom } = focused.getBoundingClientRect();
        const edge = document.querySelector('.switch')?.getBoundingClientRect().top ?? 0;
        return (top + bottom) / 2 > edge ? `${focused.tagName} ${focused.textContent}` : null;
      });
      expect(covered).toBeNull();
    }
    await app.close();
  });

  it('a file dropped beside the page is taken as one on it: the browser does not leave for it', async () => {
    const app = await AppPage.open(browser, { samples: 1, width: 1000, height: 640 });
    const taken = await app.page.evaluate(() => {
      const dataTransfer = new DataTransfer();
      dataTransfer.items.add(new File(['{'], 'broken.lampfall.json'));
      return ['dragover', 'drop'].map((type) => {
        const event = new DragEvent(type, { bubbles: true, cancelable: true, dataTransfer });
        document.documentElement.dispatchEvent(event);
        return event.defaultPrevented;
      });
    });
    expect(taken).toEqual([true, true]);
    await app.page.getByText('broken.lampfall.json').first().waitFor();
    await app.close();
  });

  it('sideways, the count of the run is whole from the first second', async () => {
    const app = await AppPage.open(browser, { samples: 1, ...sideways });
    const { page } = app;
    await page.getByRole('button', { name: 'Card', exact: true }).click();
    await page.getByRole('button', { name: 'On the phone' }).click();
    await page.getByRole('button', { name: 'Next', exact: true }).click();
    await page.getByRole('button', { name: 'Shutter', exact: true }).click();
    const timer = page.getByRole('timer');
    await expect.poll(() => timer.innerText()).toContain('to opening');
    const box = await timer.boundingBox();
    expect(box?.y).toBeGreaterThanOrEqual(0);
    expect((box?.y ?? 0) + (box?.height ?? 0)).toBeLessThanOrEqual(sideways.height);
    await app.keepScreenshot('run-740x360');
    await app.close();
  });
});
