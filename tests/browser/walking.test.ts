import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppPage } from './app-page.ts';
import { launch, leave } from './browser.ts';

describe('walking from lamp to lamp', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => leave(browser));

  it('both sides of the oak in one frame: done on a path, not over rough ground, which is said with numbers and ways out', async () => {
    const app = await AppPage.open(browser, { samples: 1, width: 1440, height: 900 });
    await app.page.locator('.menu summary').click();
    await app.page.locator('[data-sample="lone-tree"]').click();
    await app.page.getByRole('tab', { name: /^Both in one long frame/ }).click();
    const slip = app.page.locator('.slip-open');
    const numbers = app.page.locator('.slip-head', { hasText: 'from the right' }).first();
    await numbers.click();
    await expect.poll(() => slip.innerText()).toMatch(/The walk there\s*2\d(\.\d)? s · [\d.]+ s to spare/);
    expect(await app.caution('cannot-walk').count()).toBe(0);
    await app.page.locator('.slip-head', { hasText: 'clothes' }).click();
    await app.page.getByRole('button', { name: 'Rough ground 0.5' }).click();
    await expect.poll(() => app.caution('cannot-walk').count()).toBe(1);
    await expect
      .poll(() => app.caution('cannot-walk').innerText())
      .toMatch(/m to walk .* You have \d+ s\. Split them into two frames/);
    await app.page.getByRole('button', { name: 'Split in two frames' }).click();
    await expect.poll(() => app.caution('cannot-walk').count()).toBe(0);
    const shown = app.page.getByRole('group', { name: 'What the viewfinder shows' });
    const frames = shown.getByRole('button', { name: /^Painted/ });
    await expect.poll(() => frames.allInnerTexts()).toEqual(['Painted', 'Painted 2']);
    await app.page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => app.caution('cannot-walk').count()).toBe(1);
    await app.page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => app.caution('cannot-walk').count()).toBe(0);
    expect(app.faults).toEqual([]);
    await app.close();
  });
});
