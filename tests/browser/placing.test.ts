import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppPage, differingShare } from './app-page.ts';
import { launch, leave } from './browser.ts';

/** Number in a field of the open slip. */
const numberIn = async (app: AppPage, name: string): Promise<number> =>
  Number(await app.page.getByRole('textbox', { name, exact: true }).first().inputValue());

const openCamera = (app: AppPage) => app.page.locator('.slip-head', { hasText: 'Camera' }).click();

describe('placing camera and subjects', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => leave(browser));

  it('walks, turns and lifts the camera by keys on the picture; one run of keys is one undo', async () => {
    const app = await AppPage.open(browser, { samples: 1 });
    await app.settled();
    await openCamera(app);
    const start = [
      await numberIn(app, 'Scene’s east'),
      await numberIn(app, 'Scene’s north'),
      await numberIn(app, 'Height'),
    ] as const;
    const first = await app.picture();
    await app.page.locator('.picture').focus();
    for (const key of ['w', 'w', 'd']) await app.page.keyboard.press(key);
    // the camera looks north within a few degrees, so ahead is north
    await expect.poll(() => numberIn(app, 'Scene’s north')).toBeCloseTo(start[1] + 1, 1);
    await expect.poll(() => numberIn(app, 'Scene’s east')).toBeCloseTo(start[0] + 0.5, 1);
    await app.page.keyboard.press('Control+z');
    await expect.poll(() => numberIn(app, 'Scene’s north')).toBe(start[1]);
    await app.page.keyboard.press('PageDown');
    await expect.poll(() => numberIn(app, 'Height')).toBeCloseTo(start[2] - 0.1, 3);
    await app.page.keyboard.press('Shift+ArrowRight');
    await app.settled();
    expect(differingShare(first, await app.picture())).toBeGreaterThan(0.02);
    expect(app.faults).toEqual([]);
    await app.close();
  });

  it('holds the camera upright: the picture is higher than wide and fits on the page; puts a stone at a third', async () => {
    const app = await AppPage.open(browser, { samples: 1, width: 1440, height: 900 });
    await app.settled();
    await openCamera(app);
    await app.page.getByRole('button', { name: 'Portrait' }).click();
    await app.settled();
    const box = await app.page.locator('.picture').boundingBox();
    expect((box?.width ?? 0) / (box?.height ?? 1)).toBeCloseTo(24 / 36, 2);
    expect(box?.height).toBeLessThan(700);
    const upright = await app.picture();
    const choice = app.page.getByRole('combobox', { name: 'Put the middle of' });
    await choice.selectOption({ label: 'Left stone' });
    await app.page.getByRole('button', { name: 'right third, lower third' }).click();
    await app.settled();
    // where it comes to stand is held to a thousandth in tests/app/web/camera-placing.test.ts
    expect(differingShare(upright, await app.picture())).toBeGreaterThan(0.02);
    await app.keepScreenshot('portrait-1440x900');
    expect(app.faults).toEqual([]);
    await app.close();
  });

  it('turns a subject by its ring, by keys in steps of 15 degrees, and measures between two places of the plan', async () => {
    const app = await AppPage.open(browser, { samples: 1 });
    await app.settled();
    await app.page.locator('g[aria-label^="Middle stone"]').focus();
    const ring = app.page.getByRole('slider', { name: /^Turn Middle stone/ });
    const before = Number(await ring.getAttribute('aria-valuenow'));
    await ring.focus();
    await app.page.keyboard.press('Shift+ArrowRight');
    await app.page.keyboard.press('Shift+ArrowRight');
    await expect.poll(async () => Number(await ring.getAttribute('aria-valuenow'))).toBeCloseTo(before + 30, 6);
    await app.page.getByRole('button', { name: 'Measure', exact: true }).click();
    await app.page.locator('.groundplan svg').scrollIntoViewIfNeeded();
    const [from, to] = [await app.planPlace(12, 0.4), await app.planPlace(6, 0.4)];
    await app.page.mouse.move(from.x, from.y);
    await app.page.mouse.down();
    await app.page.mouse.move(to.x, to.y, { steps: 4 });
    await app.page.mouse.up();
    const words = await app.page.locator('.tape-bar [role="status"]').innerText();
    const metres = Number(/^([\d.]+) m/.exec(words)?.[1]);
    // the rings of the plan tell its scale
    const rings = await app.page
      .locator('.ring')
      .evaluateAll((circles) => circles.map((c) => Number(c.getAttribute('r'))));
    const ringMetres = await app.page.locator('.plan-grid text', { hasText: ' m' }).first().textContent();
    const unitsPerMetre = (rings[0] as number) / Number.parseFloat(ringMetres ?? '');
    expect(metres).toBeCloseTo((0.8 * 250) / unitsPerMetre, 1);
    // toward the camera, which stands in the south within a few degrees
    expect(words).toMatch(/1[78]\d° from the scene’s north/);
    expect(app.faults).toEqual([]);
    await app.close();
  });

  it('selects by a press in the walkaround, and moves by its handles as one step of history', async () => {
    const app = await AppPage.open(browser, { samples: 1, width: 1440, height: 900 });
    await app.settled();
    await app.page.getByRole('button', { name: 'Any side' }).click();
    const canvas = app.page.locator('.walk-scene canvas');
    await canvas.waitFor();
    await app.page.waitForTimeout(1500);
    const box = await canvas.boundingBox();
    if (!box) throw new Error('no walkaround');
    const press = async (x: number, y: number) => app.page.mouse.click(box.x + box.width * x, box.y + box.height * y);
    await press(0.5, 0.5);
    await expect.poll(() => app.page.getByRole('textbox', { name: 'Name' }).first().inputValue()).toBe('Middle stone');
    const east = await numberIn(app, 'Scene’s east');
    // the handle to the east begins at the stone's foot and runs to the right of it
    for (let x = 0.52; x < 0.7 && (await numberIn(app, 'Scene’s east')) === east; x += 0.01) {
      const [px, py] = [box.x + box.width * x, box.y + box.height * (0.535 + (x - 0.5) * 0.16)];
      await app.page.mouse.move(px, py);
      await app.page.waitForTimeout(80);
      await app.page.mouse.down();
      await app.page.mouse.move(px + 30, py + 5, { steps: 5 });
      await app.page.mouse.up();
      await app.page.waitForTimeout(80);
    }
    expect(await numberIn(app, 'Scene’s east')).toBeGreaterThan(east);
    await app.page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => numberIn(app, 'Scene’s east')).toBe(east);
    await app.page.getByRole('button', { name: 'Measure', exact: true }).click();
    await press(0.3, 0.5);
    await press(0.64, 0.6);
    await expect.poll(() => app.page.locator('.tape-bar').innerText()).toMatch(/\d m · \d+ paces/);
    expect(app.faults).toEqual([]);
    await app.close();
  });
});
