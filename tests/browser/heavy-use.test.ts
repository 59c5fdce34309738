import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppPage, differingShare } from './app-page.ts';
import { launch, leave } from './browser.ts';
import { countHeld, heldOnCard } from './held-on-card.ts';
import { hillScan } from './hill-scan.ts';

/** What layers and first hits may take on screen (scene-of.ts) and beside it (layer-store.ts), bytes. */
const mostHeldBytes = 640e6 + 192e6;

const counted = async (page: Page): Promise<void> => void (await countHeld(page));

/** Whether the page counts as hidden, as when another tab is in front. */
const hide = (app: AppPage, isHidden: boolean) =>
  app.page.evaluate((hidden) => {
    Object.defineProperty(document, 'hidden', { value: hidden, configurable: true });
    document.dispatchEvent(new Event('visibilitychange'));
  }, isHidden);

describe('heavy use', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => leave(browser));

  it('fifty sizes of the window, ninety steps back and forth, a hidden page: it ends as it began', async () => {
    const app = await AppPage.open(browser, { width: 760, height: 520, samples: 1, before: counted });
    await app.settled();
    const start = await app.picture();
    const textOf = () => app.page.locator('.frame-line').innerText();
    const words = await textOf();

    // fifty sizes within two seconds
    await app.page.evaluate(
      () =>
        new Promise<void>((resolve) => {
          const page = document.querySelector<HTMLElement>('main.page') as HTMLElement;
          let n = 0;
          const timer = setInterval(() => {
            page.style.maxWidth = n < 50 ? `${420 + ((n * 137) % 480)}px` : '';
            n++;
            if (n <= 50) return;
            clearInterval(timer);
            resolve();
          }, 40);
        }),
    );
    await app.settled();
    expect(differingShare(start, await app.picture())).toBe(0);
    expect((await heldOnCard(app.page)).textureBytes).toBeLessThan(mostHeldBytes);

    await app.dragLamp(6, 0.6);
    await app.settled();
    const moved = await app.picture();
    expect(differingShare(start, moved)).toBeGreaterThan(0.05);
    // thirty a second for three seconds
    const steps = await app.page.evaluate(
      () =>
        new Promise<number>((resolve) => {
          let n = 0;
          const timer = setInterval(() => {
            const name = n % 2 === 0 ? 'Undo' : 'Redo';
            [...document.querySelectorAll<HTMLButtonElement>('.steps button')]
              .find((b) => b.textContent === name)
              ?.click();
            n++;
            if (n < 90) return;
            clearInterval(timer);
            resolve(n);
          }, 33);
        }),
    );
    expect(steps).toBe(90);
    await app.settled();
    expect(differingShare(moved, await app.picture())).toBe(0);

    await hide(app, true);
    await app.page.getByRole('button', { name: 'Undo' }).click();
    const { counters } = await app.probe();
    await app.page.waitForTimeout(600);
    expect((await app.probe()).counters).toEqual(counters);
    expect((await app.probe()).isConverged).toBe(false);
    await hide(app, false);
    await app.settled();
    expect(differingShare(start, await app.picture())).toBe(0);
    expect(await textOf()).toBe(words);
    expect(app.faults).toEqual([]);
    await app.close();
  });

  it('a scan of 300,000 triangles comes in, is drawn and taken back; what the card holds stays bounded', async () => {
    const app = await AppPage.open(browser, { samples: 1, before: counted });
    await app.settled();
    const before = await app.picture();
    const small = (await heldOnCard(app.page)).textureBytes;
    await app.page.setInputFiles('input[aria-label="Scan file"]', {
      name: 'hill.ply',
      mimeType: 'application/octet-stream',
      buffer: hillScan(387),
    });
    const dialog = app.page.getByRole('dialog');
    await expect.poll(() => dialog.innerText(), { timeout: 60_000 }).toMatch(/299,538 triangles/);
    await dialog.getByRole('button', { name: 'Bring it in' }).click();
    await dialog.waitFor({ state: 'detached', timeout: 60_000 });
    const subject = app.page.getByRole('button', { name: /^hill, a subject/ });
    await subject.waitFor();
    await app.settled();
    expect(differingShare(before, await app.picture())).toBeGreaterThan(0.01);
    const large = (await heldOnCard(app.page)).textureBytes;
    // the stage in textures: under 200 bytes a triangle
    expect(large - small).toBeGreaterThan(5e6);
    expect(large - small).toBeLessThan(60e6);
    await app.page.getByRole('button', { name: 'Undo' }).click();
    await subject.waitFor({ state: 'detached' });
    await app.settled();
    expect(differingShare(before, await app.picture())).toBe(0);
    expect((await heldOnCard(app.page)).textureBytes).toBeLessThan(small + 10e6);
    expect(app.faults).toEqual([]);
    await app.close();
  });
});
