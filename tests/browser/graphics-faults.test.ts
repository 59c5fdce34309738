import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppPage, differingShare } from './app-page.ts';
import { launch, leave } from './browser.ts';

/** A page whose canvases give no WebGL2. */
const withoutWebGl2 = async (page: Page): Promise<void> => {
  await page.addInitScript(() => {
    const original = HTMLCanvasElement.prototype.getContext;
    HTMLCanvasElement.prototype.getContext = function (this: HTMLCanvasElement, kind: string, ...rest: unknown[]) {
      return kind === 'webgl2' ? null : original.apply(this, [kind, ...rest] as never);
    } as typeof original;
  });
};

/** A page that waits so long for a lost card, milliseconds. */
const patient =
  (milliseconds: number) =>
  async (page: Page): Promise<void> =>
    void (await page.addInitScript((most) => {
      window.lampfallPatience = most;
    }, milliseconds));

/** Takes the graphics card away from the page, or gives it back. */
const card = (app: AppPage, what: 'loseContext' | 'restoreContext') =>
  app.page.evaluate((call) => {
    const own = window as { lose?: WEBGL_lose_context | null };
    // a lost context tells of no extension
    own.lose ??= window.lampfallCard?.().getContext('webgl2')?.getExtension('WEBGL_lose_context') ?? null;
    own.lose?.[call]();
  }, what);

const note = (app: AppPage) => app.page.locator('.light-note');

/** Pixels of the viewfinder's own canvas, without what lies over it. */
const pixels = async (app: AppPage): Promise<Uint8Array> =>
  Uint8Array.from(
    await app.page.evaluate(() => {
      const canvas = document.querySelector<HTMLCanvasElement>('.picture canvas') as HTMLCanvasElement;
      return [...(canvas.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height).data ?? [])];
    }),
  );

describe('a graphics card that fails', () => {
  let browser: Browser;
  /** The first picture as the card draws it. */
  let byCard: Uint8Array;
  beforeAll(async () => {
    browser = await launch();
    const app = await AppPage.open(browser, { samples: 1 });
    await app.settled();
    byCard = await pixels(app);
    await app.close();
  });
  afterAll(() => leave(browser));

  it('is not there: the processor draws the same picture; edits, undo, plan, readings, card and tiles work', async () => {
    const app = await AppPage.open(browser, { samples: 1, before: withoutWebGl2 });
    await expect.poll(() => note(app).innerText()).toContain('This machine’s graphics can’t draw the picture');
    await app.settled();
    const first = await pixels(app);
    // in bytes of sRGB: single and double precision part at the edges of shadows
    expect(differingShare(byCard, first, 4)).toBeLessThan(0.01);
    await app.dragLamp(6, 0.6);
    await expect.poll(() => app.caution('near-axis').count(), { timeout: 20_000 }).toBe(1);
    await app.settled();
    expect(differingShare(first, await pixels(app))).toBeGreaterThan(0.05);
    await app.page.getByRole('button', { name: 'Undo' }).click();
    await app.settled();
    expect(differingShare(first, await pixels(app))).toBe(0);
    const walk = app.page.getByRole('button', { name: 'Any side' });
    expect(await walk.isDisabled()).toBe(true);
    expect(await walk.getAttribute('title')).toContain('WebGL2');
    await app.page.getByRole('button', { name: 'Compare', exact: true }).click();
    await app.settled();
    const brightest = await app.page.evaluate(() =>
      [...document.querySelectorAll<HTMLCanvasElement>('.tile-picture canvas')].map((canvas) =>
        Math.max(
          ...(canvas.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height).data ?? []).filter(
            (_, i) => i % 4 < 3,
          ),
        ),
      ),
    );
    expect(brightest.length).toBeGreaterThan(2);
    expect(Math.min(...brightest)).toBeGreaterThan(20);
    await app.page.getByRole('button', { name: 'Card', exact: true }).click();
    await expect
      .poll(() => app.page.locator('.field-card, .card-room').first().innerText(), { timeout: 20_000 })
      .toContain('Key');
    expect(app.faults).toEqual([]);
    await app.close();
  });

  it('is lost twice in the middle of tracing: the last picture stays, work goes on, and it comes back by itself', async () => {
    const app = await AppPage.open(browser, { samples: 1, before: patient(600_000) });
    await app.settled();
    const before = await pixels(app);
    await app.dragLamp(6, 0.6);
    await app.settled();
    const moved = await pixels(app);
    await app.page.getByRole('button', { name: 'Undo' }).click();
    await card(app, 'loseContext');
    await note(app).waitFor();
    expect(await note(app).innerText()).toContain('This is the last picture');
    expect(Math.max(...(await pixels(app)))).toBe(255);
    await app.page.getByRole('button', { name: 'Redo' }).click();
    await expect.poll(() => app.caution('near-axis').count(), { timeout: 20_000 }).toBe(1);
    // lost again a moment after it came back, while all is traced anew
    await app.page.evaluate(
      () =>
        new Promise<void>((resolve) => {
          const canvas = window.lampfallCard?.() as HTMLCanvasElement;
          const { lose } = window as { lose?: WEBGL_lose_context };
          canvas.addEventListener('webglcontextrestored', () => setTimeout(() => lose?.loseContext(), 30), {
            once: true,
          });
          canvas.addEventListener('webglcontextlost', () => resolve(), { once: true });
          lose?.restoreContext();
        }),
    );
    await note(app).waitFor();
    await card(app, 'restoreContext');
    await app.settled();
    expect(differingShare(moved, await pixels(app))).toBeLessThan(0.001);
    await app.page.getByRole('button', { name: 'Undo' }).click();
    await app.settled();
    expect(differingShare(before, await pixels(app))).toBeLessThan(0.001);
    expect(await note(app).count()).toBe(0);
    expect(app.faults).toEqual([]);
    await app.close();
  });

  it('is lost for good: the processor takes over with what was changed meanwhile; should the card come back, it draws again', async () => {
    const app = await AppPage.open(browser, { samples: 1, before: patient(400) });
    await app.settled();
    await app.dragLamp(6, 0.6);
    await card(app, 'loseContext');
    await app.page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => note(app).innerText()).toContain('did not come back');
    await app.settled();
    expect(differingShare(byCard, await pixels(app), 4)).toBeLessThan(0.01);
    await card(app, 'restoreContext');
    await note(app).waitFor({ state: 'detached' });
    await app.settled();
    expect(differingShare(byCard, await pixels(app))).toBeLessThan(0.001);
    expect((await app.probe()).counters.hits).toBeGreaterThan(0);
    expect(app.faults).toEqual([]);
    await app.close();
  });
});
