import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppPage } from './app-page.ts';
import { axeFaults } from './axe.ts';
import { launch, leave } from './browser.ts';

declare global {
  interface Window {
    told: { spoken: string[]; pulses: number; locks: number; released: number };
  }
}

/** Stands in for the voice, the motor and the lock of a phone, and notes what they were asked. */
const withPhone = async (page: Page) => {
  await page.addInitScript(() => {
    const told = { spoken: [] as string[], pulses: 0, locks: 0, released: 0 };
    window.told = told;
    speechSynthesis.speak = ({ text }) => void told.spoken.push(text);
    navigator.vibrate = () => ++told.pulses > 0;
    const release = async () => void told.released++;
    const request = async () => {
      told.locks++;
      return { release };
    };
    Object.defineProperty(navigator, 'wakeLock', { value: { request } });
  });
};

describe('run it tonight', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => leave(browser));

  it('counts, takes what was said, keeps it, takes it back, and starts from it; targets are 15 mm', async () => {
    const app = await AppPage.open(browser, { samples: 1, width: 390, height: 844, before: withPhone });
    const { page } = app;
    const press = (name: string) => page.getByRole('button', { name, exact: true }).click();
    const told = () => page.evaluate(() => window.told);
    await page.locator('.menu > summary').click();
    await page.getByRole('button', { name: /^Run it tonight/ }).click();
    const count = page.getByRole('timer');
    await expect.poll(() => page.locator('.run-row').innerText()).toContain('Sky: no lamp');
    await press('Done');
    await expect.poll(() => count.innerText()).toContain('8 s');
    expect((await told()).locks).toBeGreaterThan(0);

    const small = await page.evaluate(() =>
      [...document.querySelectorAll('button')]
        .map((button) => ({ name: button.innerText, box: button.getBoundingClientRect() }))
        // 15 mm at 96 pixels to the inch
        .filter(({ box }) => Math.min(box.width, box.height) < (15 / 25.4) * 96)
        .map(({ name }) => name),
    );
    expect(small).toEqual([]);
    expect(await axeFaults(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollHeight - innerHeight)).toBeLessThanOrEqual(0);
    // nothing is left that would be traced
    expect(await page.locator('canvas').count()).toBe(0);
    await app.keepScreenshot('night-run-390x844');

    await press('Count');
    await expect.poll(() => count.innerText()).toContain('on');
    await expect.poll(async () => (await told()).spoken.slice(0, 4)).toEqual(['three', 'two', 'one', 'on']);
    expect((await told()).pulses).toBeGreaterThanOrEqual(4);
    await press('Stop');

    await press('Too bright');
    await expect.poll(() => count.innerText()).toContain('4 s');
    expect(await page.getByRole('status').innerText()).toContain('now count 4 s');
    await press('Too dark');
    await press('Undo');
    await expect.poll(() => count.innerText()).toContain('4 s');
    await press('Flat');
    await expect.poll(() => page.getByRole('status').innerText()).toContain('lower the lamp');
    await press('Done');

    await press('Nights');
    const log = page.getByRole('list').first();
    await expect.poll(() => log.innerText()).toMatch(/8 s · 3:00 · .* · too bright\s.*4 s · .* · flat\s.*4 s.*done/);
    await page.getByLabel('Notes').fill('Dew on the lens at ten.');
    await press('Start from it');
    await page.getByRole('tab', { name: /^As run on/ }).waitFor();
    expect((await told()).released).toBeGreaterThan(0);
    await page.locator('.menu > summary').click();
    await page.getByRole('button', { name: /^Run it tonight/ }).click();
    await press('Next');
    await expect.poll(() => count.innerText()).toContain('4 s');
    await press('Nights');
    expect(await page.getByLabel('Notes').inputValue()).toBe('Dew on the lens at ten.');
    await page.goBack();
    await page.getByRole('button', { name: 'Shutter' }).waitFor();
    await page.goBack();
    await page.getByRole('tab', { name: /^As run on/ }).waitFor();
    await page.goForward();
    await press('Nights');
    await press('Delete');
    await press('Undo');
    await expect.poll(() => page.getByLabel('Notes').count()).toBe(1);
    expect(app.faults).toEqual([]);
    await app.close();
  });
});
