import { decode } from 'fast-png';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppPage, differingShare } from './app-page.ts';
import { launch, leave } from './browser.ts';

describe('the main job in the page', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => leave(browser));

  it('drag the torch from three o’clock to beside the camera: near-axis appears, the picture changes, undo brings both back', async () => {
    const app = await AppPage.open(browser);
    await app.settled();
    expect(await app.lamp().getAttribute('aria-label')).toContain('at 3:00');
    await expect.poll(() => app.page.locator('.cautions').innerText()).toContain('No cautions');
    const before = await app.picture();
    await app.keepScreenshot('stones-side');

    const hint = app.page.getByLabel('What to do first', { exact: true });
    expect(await hint.innerText()).toContain('to half past five, beside the camera');
    await app.dragLamp(5.5, 0.6);
    await expect.poll(() => app.caution('near-axis').count(), { timeout: 20_000 }).toBe(1);
    await expect.poll(() => app.caution('near-axis').innerText()).toMatch(/\d° off the camera’s axis.*flat/);
    // done, so it goes; and the caution says why
    expect(await hint.count()).toBe(0);
    const why = app.caution('near-axis').getByRole('button', { name: 'Why' });
    await why.click();
    await expect.poll(() => app.caution('near-axis').innerText()).toContain('Source: Common practice');
    await why.click();
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
    await app.close();
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
    await app.close();
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
    await app.close();
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
    await expect.poll(() => app.page.getByRole('alert').innerText()).toContain('Type a number');
    await aperture.press('Escape');
    expect(await aperture.inputValue()).toBe('2.8');
    await aperture.press('ArrowUp');
    expect(await aperture.inputValue()).toBe('3.2');
    const away = app.page.getByLabel('Level distance');
    await away.fill('10 ft');
    await away.press('Enter');
    expect(await app.lamp().getAttribute('aria-label')).toContain('3.1 m'); // 3.05 m along the ground, 0.4 m down
    await app.close();
  });

  it('an arrow key held down in a field is one step of the history; Escape meanwhile takes it back', async () => {
    const app = await AppPage.open(browser, { samples: 1 });
    const height = app.page.getByLabel(/^Height/);
    await height.focus();
    for (let i = 0; i < 5; i++) await app.page.keyboard.down('ArrowUp');
    await app.page.keyboard.up('ArrowUp');
    expect(await height.inputValue()).toBe('1.3');
    await app.page.keyboard.press('Control+z');
    expect(await height.inputValue()).toBe('0.8');
    expect(await app.page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);
    await height.focus();
    await app.page.keyboard.down('ArrowDown');
    await app.page.keyboard.press('Escape');
    await app.page.keyboard.up('ArrowDown');
    expect(await height.inputValue()).toBe('0.8');
    // from a field that has the focus straight into a drag on the plan
    await height.focus();
    await app.dragLamp(6, 0.6);
    expect(await app.lamp().getAttribute('aria-label')).toContain('at 6:00');
    await app.close();
  });

  it('the walkaround shows where lamp and camera stand, and the plan comes back', async () => {
    const app = await AppPage.open(browser, { samples: 1 });
    await app.settled();
    await app.page.getByRole('button', { name: 'Any side' }).click();
    const canvas = app.page.locator('.walkaround canvas');
    await canvas.waitFor();
    await app.page.waitForTimeout(1500);
    const colours = new Set<string>();
    const { data, channels } = decode(await canvas.screenshot());
    for (let i = 0; i < data.length; i += channels * 97) colours.add(data.slice(i, i + 3).join());
    // sky, ground, stones in several tones, lines: an empty canvas has one colour
    expect(colours.size).toBeGreaterThan(20);
    await app.page.getByRole('button', { name: 'From above' }).click();
    await app.lamp().waitFor();
    expect(app.faults).toEqual([]);
    await app.close();
  });

  it('a second torch from the box: out of the picture, told in lumens or beam distance, too bright with what to do', async () => {
    const app = await AppPage.open(browser, { samples: 1 });
    await app.page
      .getByRole('group', { name: 'Add a lamp' })
      .getByRole('button', { name: 'torch', exact: true })
      .click();
    await expect.poll(() => app.page.locator('.lamp-disc').count()).toBe(2);
    await expect.poll(() => app.page.locator('.slip-open .slip-light').innerText()).toContain('stops');
    expect(await app.caution('lamp-in-frame').count()).toBe(0);
    const output = app.page.getByLabel('Output', { exact: true });
    await output.fill('60,000');
    await output.press('Enter');
    expect(await output.inputValue()).toBe('60000');
    await expect.poll(() => app.caution('burnt').count(), { timeout: 20_000 }).toBeGreaterThan(0);
    await expect
      .poll(() => app.caution('burnt').first().innerText())
      .toMatch(/stops over mid-grey; .*stops too bright at [\d.]+ m, level\. Step back to [\d.]+ m\./);
    // 0.25 lx rule (ANSI/PLATO FL 1-2019): the same lamp as a beam distance is 2 sqrt(candela)
    await app.page.getByLabel('The box says').selectOption('beam-distance');
    const candela = Number((await app.page.locator('.lamp-fields legend').innerText()).match(/([\d.]+) cd/)?.[1]);
    expect(Number(await app.page.getByLabel('Beam distance').inputValue())).toBeCloseTo(2 * Math.sqrt(candela), -1);
    await app.close();
  });

  it('a shutter shorter than the count says that it cut it, and undo gives it back', async () => {
    const app = await AppPage.open(browser, { samples: 1 });
    const shutter = app.page.getByLabel('Shutter');
    await shutter.fill('1/60');
    await shutter.press('Enter');
    await expect.poll(() => app.page.getByRole('alert').innerText()).toContain('Key from 8 s');
    expect(await app.page.locator('.slip .count').first().innerText()).toBe('1/60 s');
    await app.page.keyboard.press('Control+z');
    expect(await app.page.locator('.slip .count').first().innerText()).toBe('8 s');
    await app.close();
  });
});
