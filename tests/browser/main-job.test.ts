import { decode } from 'fast-png';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppPage, differingShare } from './app-page.ts';
import { launch } from './browser.ts';

describe('the main job in the page', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => browser.close());

  it('drag the torch from three o’clock to six: near-axis appears, the picture changes, undo brings both back', async () => {
    const app = await AppPage.open(browser);
    await app.settled();
    expect(await app.lamp().getAttribute('aria-label')).toContain('at 3:00');
    await expect.poll(() => app.page.locator('.cautions').innerText()).toContain('No cautions');
    const before = await app.picture();
    await app.keepScreenshot('stones-side');

    await app.dragLamp(6, 0.6);
    await expect.poll(() => app.caution('near-axis').count(), { timeout: 20_000 }).toBe(1);
    expect(await app.caution('near-axis').innerText()).toMatch(/\d° off the camera’s axis.*flat/);
    await app.settled();
    const front = await app.picture();
    expect(differingShare(before, front)).toBeGreaterThan(0.05);
    await app.keepScreenshot('stones-front');

    await app.page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => app.caution('near-axis').count(), { timeout: 20_000 }).toBe(0);
    expect(await app.lamp().getAttribute('aria-label')).toContain('at 3:00');
    await app.settled();
    expect(differingShare(before, await app.picture())).toBe(0);
    expect(app.faults).toEqual([]);
    await app.page.close();
  });

  it('Escape during a drag takes it back and leaves no entry in the history', async () => {
    const app = await AppPage.open(browser);
    const from = await app.lampPlace();
    const to = await app.planPlace(6, 0.6);
    await app.page.mouse.move(from.x, from.y);
    await app.page.mouse.down();
    await app.page.mouse.move(to.x, to.y, { steps: 4 });
    expect(await app.lamp().getAttribute('aria-label')).not.toContain('at 3:00');
    await app.page.keyboard.press('Escape');
    await app.page.mouse.move(to.x + 30, to.y);
    await app.page.mouse.up();
    expect(await app.lamp().getAttribute('aria-label')).toContain('at 3:00');
    expect(await app.page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);
    await app.page.close();
  });

  it('keys do what the mouse does: arrows nudge 0.1 m, Alt walks round the clock, Page Up lifts, Ctrl+Z undoes', async () => {
    const app = await AppPage.open(browser);
    const label = () => app.lamp().getAttribute('aria-label');
    await app.lamp().focus();
    await app.page.keyboard.press('ArrowLeft');
    expect(await label()).toContain('5.9 m');
    await app.page.keyboard.press('Shift+ArrowLeft');
    expect(await label()).toContain('4.9 m');
    await app.page.keyboard.press('Alt+ArrowRight');
    expect(await label()).toContain('at 3:10');
    await app.page.keyboard.press('PageUp');
    const height = app.page.getByLabel(/^Height/);
    expect(await height.inputValue()).toBe('0.9');
    for (let i = 0; i < 4; i++) await app.page.keyboard.press('Control+z');
    expect(await label()).toContain('at 3:00 · 6.0 m');
    await app.page.close();
  });

  it('numbers can be typed with units; a wrong one is refused with words and the old one stays', async () => {
    const app = await AppPage.open(browser);
    const aperture = app.page.getByLabel('Aperture');
    await aperture.fill('f/2.8');
    await aperture.press('Enter');
    expect(await aperture.inputValue()).toBe('2.8');
    await expect.poll(() => app.caution('burnt').count()).toBe(0);
    await aperture.fill('two');
    await aperture.press('Enter');
    expect(await app.page.getByRole('alert').innerText()).toContain('Type a number');
    await aperture.press('Escape');
    expect(await aperture.inputValue()).toBe('2.8');
    await aperture.press('ArrowUp');
    expect(await aperture.inputValue()).toBe('3.2');
    const away = app.page.getByLabel('Away');
    await away.fill('10 ft');
    await away.press('Enter');
    expect(await app.lamp().getAttribute('aria-label')).toContain('3.1 m'); // 3.05 m along the ground, 0.4 m down
    await app.page.close();
  });

  it('two schemes stand side by side, each with its own light', async () => {
    const app = await AppPage.open(browser);
    await app.page.getByLabel('Beside it').selectOption('front');
    await app.settled();
    const names = await app.page.locator('.picture-names span').allInnerTexts();
    expect(names).toEqual(['Side', 'Front']);
    await app.keepScreenshot('stones-side-beside-front');
    const { counters } = await app.probe();
    expect(Object.keys(counters.light).sort()).toEqual(['front/key', 'side/key', 'sky']);
    expect(app.faults).toEqual([]);
    await app.page.close();
  });

  it('the walkaround shows where lamp and camera stand, and the plan comes back', async () => {
    const app = await AppPage.open(browser, { samples: 1 });
    await app.settled();
    await app.page.getByRole('button', { name: 'Walk round' }).click();
    const canvas = app.page.locator('.walkaround canvas');
    await canvas.waitFor();
    await app.page.waitForTimeout(1500);
    const colours = new Set<string>();
    const { data, channels } = decode(await canvas.screenshot());
    for (let i = 0; i < data.length; i += channels * 97) colours.add(data.slice(i, i + 3).join());
    // sky, ground, stones in several tones, lines: an empty canvas has one colour
    expect(colours.size).toBeGreaterThan(20);
    await app.page.getByRole('button', { name: 'Walk round' }).click();
    await app.lamp().waitFor();
    expect(app.faults).toEqual([]);
    await app.page.close();
  });
});
