import { readFileSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppPage } from './app-page.ts';
import { launch, leave } from './browser.ts';

const patience = { timeout: 30_000 };

describe('marks over the picture', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => leave(browser));

  it('Shadows outlines and hatches what each lamp casts; they follow the lamp and trace nothing', async () => {
    const app = await AppPage.open(browser, { samples: 1 });
    const { page } = app;
    const before = await app.settled();
    const fill = page.locator('.picture-shadow-fill');
    expect(await fill.count()).toBe(0);
    await page.getByLabel('Shadows', { exact: true }).check();
    await expect.poll(() => fill.count(), patience).toBe(1);
    expect(await fill.evaluate((path) => getComputedStyle(path).fill)).toMatch(/^url\(/);
    expect(await page.locator('.picture-name').allTextContents()).toEqual(['Key']);
    const path = await fill.getAttribute('d');
    // three stones: three shadows at least, each a closed line
    expect((path?.match(/Z/g) ?? []).length).toBeGreaterThanOrEqual(3);
    expect((await app.probe()).counters).toEqual(before.counters);

    await app.lamp().focus();
    await page.keyboard.press('Alt+ArrowRight');
    await expect.poll(() => fill.getAttribute('d'), patience).not.toBe(path);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => fill.getAttribute('d'), patience).toBe(path);
    await page.getByLabel('Shadows', { exact: true }).uncheck();
    await expect.poll(() => fill.count()).toBe(0);
    expect(app.faults).toEqual([]);
    await app.close();
  });

  it('Lit outline draws a doubled line on the lamp’s side of each stone', async () => {
    const app = await AppPage.open(browser, { samples: 1 });
    const { page } = app;
    await page.getByLabel('Lit outline', { exact: true }).check();
    await expect.poll(() => page.locator('.picture-lit').count(), patience).toBeGreaterThanOrEqual(3);
    const middle = async (selector: string) => {
      const boxes = await page
        .locator(selector)
        .evaluateAll((all) => all.map((each) => each.getBoundingClientRect().toJSON()));
      return boxes.map(({ x, width }) => x + width / 2).sort((a, b) => a - b);
    };
    // the torch stands at three o’clock: from left to right each stone’s dark edge comes before its lit one
    const [lit, dark] = [await middle('.picture-lit'), await middle('.picture-unlit')];
    expect(dark).toHaveLength(lit.length);
    lit.forEach((x, stone) => {
      expect(x).toBeGreaterThan(dark[stone] as number);
    });
    expect(app.faults).toEqual([]);
    await app.close();
  });

  it('a patch by keys: put, moved, made wider, numbers told, taken away; undo goes all the way back', async () => {
    const app = await AppPage.open(browser, { samples: 1 });
    const { page } = app;
    const patch = page.locator('#patch');
    const numbers = page.locator('.patch-numbers');
    const box = async () => {
      const found = await patch.boundingBox();
      if (!found) throw new Error('no patch');
      return found;
    };
    const picture = await page.locator('.picture-marks').boundingBox();
    await page.getByRole('button', { name: 'Patch', exact: true }).press('Enter');
    await expect.poll(() => page.evaluate(() => document.activeElement?.id)).toBe('patch');
    await expect.poll(() => numbers.textContent(), patience).toMatch(/^contrast \d+\.\d\d · .*% in shadow$/);
    const first = await box();
    await page.keyboard.press('Shift+ArrowRight');
    await page.keyboard.press('Shift+ArrowRight');
    const moved = await box();
    // twice 5 % of the picture, to 2 pixels
    expect(Math.abs(moved.x - first.x - 0.1 * (picture?.width ?? 0))).toBeLessThan(2);
    await page.keyboard.press('Alt+Shift+ArrowRight');
    expect(Math.abs((await box()).width - moved.width - 0.05 * (picture?.width ?? 0))).toBeLessThan(2);
    await page.keyboard.press('Delete');
    expect(await patch.count()).toBe(0);
    await page.getByRole('button', { name: 'Undo' }).click();
    expect(await patch.count()).toBe(1);
    // keys that follow each other within a second are one step, slower ones are three
    const undo = page.getByRole('button', { name: 'Undo' });
    for (let step = 0; step < 4 && (await undo.isEnabled()); step++) await undo.click();
    expect(await patch.count()).toBe(0);
    expect(app.faults).toEqual([]);
    await app.close();
  });

  it('a drag on the picture draws the patch anew, as one step; one into the sky leaves it as it was', async () => {
    const app = await AppPage.open(browser, { samples: 1 });
    const { page } = app;
    const patch = page.locator('#patch');
    await page.getByRole('button', { name: 'Patch', exact: true }).click();
    await patch.waitFor();
    const frame = await page.locator('.picture-marks').boundingBox();
    if (!frame) throw new Error('no picture');
    const at = (x: number, y: number) => [frame.x + x * frame.width, frame.y + y * frame.height] as const;
    const draw = async (from: readonly [number, number], to: readonly [number, number]) => {
      await page.mouse.move(...at(...from));
      await page.mouse.down();
      await page.mouse.move(...at((from[0] + to[0]) / 2, (from[1] + to[1]) / 2));
      await page.mouse.move(...at(...to));
      await page.mouse.up();
    };
    const before = await patch.boundingBox();
    await draw([0.72, 0.78], [0.92, 0.92]);
    const drawn = await patch.boundingBox();
    if (!drawn) throw new Error('no patch');
    expect(Math.abs(drawn.x - (frame.x + 0.72 * frame.width))).toBeLessThan(6);
    expect(Math.abs(drawn.width - 0.2 * frame.width)).toBeLessThan(10);
    expect(Math.abs(drawn.height - 0.14 * frame.height)).toBeLessThan(10);
    await draw([0.05, 0.05], [0.2, 0.2]);
    expect(await patch.boundingBox()).toEqual(drawn);
    await page.keyboard.press('Control+z');
    expect(await patch.boundingBox()).toEqual(before);
    expect(app.faults).toEqual([]);
    await app.close();
  });

  it('numbers of a patch are those of the lamp selected, where passes of two frames are called the same', async () => {
    const setup = JSON.parse(readFileSync('assets/setups/three-stones.json', 'utf8'));
    const [scheme] = setup.schemes;
    const painted = scheme.frames.at(-1);
    const second = structuredClone({ ...painted, id: 'second', name: 'Second' });
    Object.assign(second.passes[0], {
      name: 'Other',
      waypoints: [{ position: [0.2, 0.5, 1.6], aim: [0.2, 7.75, 1.2] }],
    });
    scheme.frames.push(second);
    const app = await AppPage.open(browser, { samples: 1 });
    const { page } = app;
    await app.openText('two.json', JSON.stringify({ ...setup, id: 'two-frames', schemes: [scheme] }));
    await app.lamp('Other').waitFor();
    await page.getByRole('button', { name: 'Patch', exact: true }).press('Enter');
    const numbers = page.locator('.patch-numbers');
    await app.lamp('Key').focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => numbers.textContent(), patience).toMatch(/^contrast/);
    const ofKey = await numbers.textContent();
    await app.lamp('Other').focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => numbers.textContent(), patience).not.toBe(ofKey);
    expect(await numbers.textContent()).toMatch(/^contrast/);
    expect(app.faults).toEqual([]);
    await app.close();
  });

  it('a corner is dragged as one step, Escape takes the drag back, and the patch stays in the scene when the camera moves', async () => {
    const app = await AppPage.open(browser, { samples: 1 });
    const { page } = app;
    await page.getByRole('button', { name: 'Patch', exact: true }).click();
    const corner = page.locator('.patch-corner').nth(2);
    const place = async () => {
      const found = await corner.locator('rect').boundingBox();
      if (!found) throw new Error('no corner');
      return { x: found.x + found.width / 2, y: found.y + found.height / 2 };
    };
    /** On the picture, wherever the page is scrolled to. */
    const inPicture = async () => {
      const picture = await page.locator('.left canvas').first().boundingBox();
      const { x, y } = await place();
      return { x: x - (picture?.x ?? 0), y: y - (picture?.y ?? 0) };
    };
    const drag = async (dx: number, dy: number) => {
      await page.evaluate(() => scrollTo(0, 0));
      const { x, y } = await place();
      await page.mouse.move(x, y);
      await page.mouse.down();
      await page.mouse.move(x + dx, y + dy, { steps: 3 });
    };
    const from = await inPicture();
    await drag(40, -20);
    await page.keyboard.press('Escape');
    await page.mouse.up();
    expect(Math.hypot((await inPicture()).x - from.x, (await inPicture()).y - from.y)).toBeLessThan(1);
    await drag(40, -20);
    await page.mouse.up();
    const to = await inPicture();
    expect(Math.hypot(to.x - from.x - 40, to.y - from.y + 20)).toBeLessThan(3);
    await page.locator('.mark[aria-label^="Camera"]').focus();
    await page.keyboard.press('ArrowRight');
    // the camera goes right and still looks at its aim: what lies nearer than the aim moves left
    await expect.poll(async () => (await inPicture()).x).toBeLessThan(to.x - 1);
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByRole('button', { name: 'Undo' }).click();
    expect(Math.hypot((await inPicture()).x - from.x, (await inPicture()).y - from.y)).toBeLessThan(1);
    expect(app.faults).toEqual([]);
    await app.close();
  });
});
