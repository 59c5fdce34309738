import { readFileSync } from 'node:fs';
import { decode } from 'fast-png';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppPage, differingShare } from './app-page.ts';
import { launch, leave } from './browser.ts';

declare global {
  interface Window {
    /** Draw calls on the walkaround's canvas. */
    walkDraws?: number;
  }
}

/** Counts what is drawn in the walkaround. */
const countDraws = async (page: Page): Promise<void> => {
  await page.addInitScript(() => {
    for (const name of ['drawElements', 'drawArrays', 'drawArraysInstanced', 'drawElementsInstanced'] as const) {
      const draw = WebGL2RenderingContext.prototype[name] as (...of: unknown[]) => void;
      Object.assign(WebGL2RenderingContext.prototype, {
        [name](this: WebGL2RenderingContext, ...of: unknown[]) {
          if (this.canvas instanceof HTMLElement && this.canvas.closest('.walkaround'))
            window.walkDraws = (window.walkDraws ?? 0) + 1;
          draw.apply(this, of);
        },
      });
    }
  });
};

const drawsOf = (app: AppPage): Promise<number> => app.page.evaluate(() => window.walkDraws ?? 0);

/** Waits until the walkaround has drawn and is at rest, and takes what it shows. */
const look = async (app: AppPage) => {
  // a button that the pointer is over looks otherwise
  await app.page.mouse.move(2, 2);
  let before = -1;
  await expect
    .poll(
      async () => {
        const now = await drawsOf(app);
        const isAtRest = now > 0 && now === before;
        before = now;
        return isAtRest;
      },
      { timeout: 20_000, interval: 300 },
    )
    .toBe(true);
  const { data, channels } = decode(await app.page.locator('.walk-scene canvas').screenshot());
  return { data: data as Uint8Array, channels };
};

const walk = async (browser: Browser, change?: (setup: ReturnType<typeof stones>) => void): Promise<AppPage> => {
  const app = await AppPage.open(browser, { samples: 1, pixelRatio: 1, before: countDraws });
  if (change) {
    const setup = stones();
    change(setup);
    await app.openText('changed.json', JSON.stringify(setup));
  }
  await app.settled();
  await app.page.getByRole('button', { name: 'Any side' }).click();
  await app.page.locator('.walk-scene canvas').waitFor();
  return app;
};

const stones = () =>
  JSON.parse(readFileSync('assets/setups/three-stones.json', 'utf8')) as {
    name: string;
    schemes: { frames: { passes: unknown[] }[] }[];
  };

describe('the walkaround', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => leave(browser));

  it('arrow keys turn the view and turn it back, plus comes closer, Reset view returns; at rest nothing is drawn', async () => {
    const app = await walk(browser);
    const first = await look(app);
    await app.page.locator('.walk-scene').focus();
    for (let i = 0; i < 4; i++) await app.page.keyboard.press('ArrowLeft');
    const turned = await look(app);
    expect(differingShare(first.data, turned.data)).toBeGreaterThan(0.02);
    for (let i = 0; i < 4; i++) await app.page.keyboard.press('ArrowRight');
    expect(differingShare(first.data, (await look(app)).data)).toBeLessThan(0.001);
    await app.page.keyboard.press('+');
    expect(differingShare(first.data, (await look(app)).data)).toBeGreaterThan(0.02);
    await app.page.getByRole('button', { name: 'Reset view' }).click();
    expect(differingShare(first.data, (await look(app)).data)).toBeLessThan(0.001);
    const draws = await drawsOf(app);
    await app.page.waitForTimeout(800);
    expect(await drawsOf(app)).toBe(draws);
    expect(app.faults).toEqual([]);
    await app.close();
  });

  it('is seen from the camera, from above and from the side; names what stands there; follows the scheme', async () => {
    const app = await walk(browser);
    const seen = [await look(app)];
    for (const name of ['Camera', 'Above', 'Side']) {
      await app.page.locator('.walk-views').getByRole('button', { name }).click();
      seen.push(await look(app));
      await app.keepScreenshot(`walkaround-${name.toLowerCase()}`);
    }
    for (let a = 0; a < seen.length; a++)
      for (let b = 0; b < a; b++)
        expect(differingShare(seen[a]?.data as Uint8Array, seen[b]?.data as Uint8Array)).toBeGreaterThan(0.02);
    // walks say metres and seconds
    const names = (await app.page.locator('.walk-label').allInnerTexts()).filter((text) => !/\d m/.test(text));
    expect(names.sort()).toEqual(['Camera', 'Key']);
    const keyPlace = () => app.page.locator('.walk-label', { hasText: 'Key' }).boundingBox();
    const before = await keyPlace();
    await app.page.locator('#scheme-front').click();
    await look(app);
    const after = await keyPlace();
    // from three o'clock, toward the eye, to the camera, at the left
    expect((before?.x ?? 0) - (after?.x ?? 0)).toBeGreaterThan(50);
    expect(app.faults).toEqual([]);
    await app.close();
  });

  it('draws the shadows on the ground as dark lines, and none without a lamp', async () => {
    /** Pixels darker than the sky and the fog: only hatching is. */
    const darkPixels = async (app: AppPage) => {
      await app.page.locator('.walk-views').getByRole('button', { name: 'Above' }).click();
      const { data, channels } = await look(app);
      let count = 0;
      for (let i = 0; i < data.length; i += channels) if (Math.max(...data.subarray(i, i + 3)) < 18) count++;
      return count;
    };
    const lit = await walk(browser);
    const withLamp = await darkPixels(lit);
    await lit.page.close();
    const unlit = await walk(browser, (setup) => {
      setup.name = 'Unlit stones';
      for (const { frames } of setup.schemes) for (const frame of frames) frame.passes = [];
    });
    const without = await darkPixels(unlit);
    await unlit.page.close();
    expect(withLamp).toBeGreaterThan(without + 500);
  });
});
