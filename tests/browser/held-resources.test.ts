import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppPage } from './app-page.ts';
import { launch, leave } from './browser.ts';
import { countHeld, heldOnCard } from './held-on-card.ts';

const press = (app: AppPage, name: string) => app.page.getByRole('button', { name, exact: true }).first().click();

/** A round of edits, rooms and sizes that ends where it began. */
const round = async (app: AppPage): Promise<void> => {
  // a step at a time: which places of a drag are traced, and kept for a while, hangs on the clock
  await app.lamp().focus();
  await app.page.keyboard.press('Shift+ArrowLeft');
  await app.settled();
  await press(app, 'Undo');
  await press(app, 'Any side');
  await app.page.locator('.walkaround canvas').waitFor();
  await press(app, 'Compare');
  await app.settled();
  await press(app, 'From above');
  await press(app, 'Picture');
  await app.page.setViewportSize({ width: 820, height: 560 });
  await app.settled();
  await app.page.setViewportSize({ width: 1000, height: 640 });
  await app.settled();
  // a canvas that was taken away lets go of its context a moment later
  await expect.poll(() => heldOnCard(app.page).then(({ contexts }) => contexts), { timeout: 10_000 }).toBe(1);
};

describe('what is held on the graphics card', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => leave(browser));

  it('does not grow from round to round of edits, rooms and sizes', async () => {
    const app = await AppPage.open(browser, { samples: 1, before: async (page) => void (await countHeld(page)) });
    await app.settled();
    await round(app);
    const before = await heldOnCard(app.page);
    for (let i = 0; i < 2; i++) await round(app);
    const after = await heldOnCard(app.page);
    expect(after).toEqual(before);
    expect(before.Texture).toBeGreaterThan(5);
    expect(before.Program).toBeGreaterThan(3);
    expect(app.faults).toEqual([]);
    await app.close();
  });
});
