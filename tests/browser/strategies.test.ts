import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppPage } from './app-page.ts';
import { launch, leave } from './browser.ts';

describe('frames, passes and the ground: what one person can do', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => leave(browser));

  const oak = async (): Promise<AppPage> => {
    const app = await AppPage.open(browser, { samples: 1, width: 1440, height: 900 });
    await app.page.locator('.menu summary').click();
    await app.page.locator('[data-sample="lone-tree"]').click();
    return app;
  };

  it('the oak in three ways: one frame can’t be walked, standing lights are dim, painted frames make frames and a blend', async () => {
    const app = await oak();
    const { page } = app;
    await page.getByRole('tab', { name: /^Both in one long frame/ }).click();
    await page.getByRole('button', { name: /How to light it/ }).click();
    const one = page.locator('[data-strategy="one-frame"]');
    await expect.poll(() => one.innerText()).toMatch(/times less light than now.*Can be walked: no, \d+ s for 8 s/s);
    const standing = page.locator('[data-strategy="standing"]');
    expect(await standing.innerText()).toMatch(/lit throughout at [\d.]+ %.*Nobody walks.*quarter moon/s);
    const separate = page.locator('[data-strategy="separate"]');
    expect(await separate.innerText()).toMatch(/count \d+ at 100 %.*Can be walked: yes, between frames, up to \d+ s/s);
    await separate.getByRole('button', { name: 'Make a scheme of it' }).click();
    const tab = page.getByRole('tab', { name: /painted frames/ });
    await expect.poll(() => tab.getAttribute('aria-selected')).toBe('true');
    const shown = page.getByRole('group', { name: 'What the viewfinder shows' }).getByRole('button');
    expect(await shown.allInnerTexts()).toEqual(['Sky', 'Rim from the left', 'Rim from the right', 'Blend']);
    expect(await shown.last().getAttribute('aria-pressed')).toBe('true');
    await expect.poll(() => page.locator('.slip-head .count').allInnerTexts()).toHaveLength(2);
    expect(await app.caution('cannot-walk').count()).toBe(0);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => tab.count()).toBe(0);
    expect(app.faults).toEqual([]);
    await app.close();
  });

  it('a hazard is marked, typed, dragged and taken away: its caution comes and goes', async () => {
    const app = await AppPage.open(browser, { samples: 1, width: 1440, height: 900 });
    const { page } = app;
    await expect.poll(() => page.locator('.cautions').innerText()).toContain('No cautions.');
    await page.locator('.slip-head', { hasText: 'Hazards' }).click();
    await page.locator('summary', { hasText: 'Mark a hazard' }).click();
    await page.getByRole('button', { name: 'Bog', exact: true }).click();
    const row = page.getByRole('group', { name: 'Hazard Bog' });
    const type = async (label: string, text: string) => {
      await row.getByLabel(label).fill(text);
      await page.keyboard.press('Enter');
    };
    // the key stands six metres to the east of what it lights
    await type('East', '6.2');
    await type('North', '7.5');
    await expect.poll(() => app.caution('terrain').count()).toBe(1);
    expect(await app.caution('terrain').innerText()).toMatch(/stands inside “Bog”, [\d.]+ m past its edge.*by day/);
    await type('Name', 'Quicksand');
    await expect.poll(() => app.caution('terrain').innerText()).toContain('“Quicksand”');
    const mark = page.locator('.mark[aria-label^="Quicksand,"]');
    const ring = await mark.locator('.hazard-ring').boundingBox();
    if (!ring) throw new Error('no ring on the plan');
    const [x, y] = [ring.x + ring.width / 2, ring.y + ring.height / 2];
    // by its lower half, for the lamp stands over its middle
    await page.mouse.move(x, y + ring.height * 0.3);
    await page.mouse.down();
    for (let i = 1; i <= 6; i++) await page.mouse.move(x - 15 * i, y + ring.height * 0.3 + 15 * i);
    await page.mouse.up();
    await expect.poll(() => app.caution('terrain').count()).toBe(0);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => app.caution('terrain').count()).toBe(1);
    await mark.focus();
    await page.keyboard.press('Delete');
    await expect.poll(() => app.caution('terrain').count()).toBe(0);
    expect(await mark.count()).toBe(0);
    expect(app.faults).toEqual([]);
    await app.close();
  });

  it('a focus stack is planned and made, and lines of equal blur lie over the picture', async () => {
    const app = await AppPage.open(browser, { samples: 1, width: 1440, height: 900 });
    const { page } = app;
    const type = async (label: string, text: string) => {
      await page.getByLabel(label, { exact: true }).fill(text);
      await page.keyboard.press('Enter');
    };
    await type('Aperture', '2.8');
    await page.getByRole('button', { name: 'Focus frames' }).click();
    await type('Sharp from', '2');
    const steps = page.getByRole('list', { name: 'Focus distances' }).getByRole('listitem');
    await expect.poll(() => steps.allInnerTexts()).not.toHaveLength(1);
    const planned = await steps.count();
    expect(await steps.last().innerText()).toMatch(/to infinity$/);
    await page.getByRole('button', { name: `Make ${planned} frames of “Painted”` }).click();
    const shown = page.getByRole('group', { name: 'What the viewfinder shows' });
    const frames = shown.getByRole('button', { name: /^Painted · focus/ });
    await expect.poll(() => frames.count()).toBe(planned);
    await page.getByLabel('Sharpness').check();
    // the blend has the sharpest of all; the first of the stack alone is soft behind
    await frames.first().click();
    await expect.poll(() => page.locator('.picture-sharpness [data-pixels="8"] path').count()).toBe(2);
    await expect.poll(() => page.locator('.picture-sharpness text').allTextContents()).toContain('4 px');
    expect(app.faults).toEqual([]);
    await app.close();
  });

  it('what takes long to work out holds still while something is dragged, and follows when it is let go', async () => {
    const app = await AppPage.open(browser, { samples: 1, width: 1440, height: 900 });
    const { page } = app;
    await page.getByRole('button', { name: 'Focus frames' }).click();
    await page.getByRole('button', { name: /How to light it/ }).click();
    const seen = page.getByRole('group', { name: 'Nearest that is seen' });
    const plans = page.locator('.approach-list');
    await expect.poll(() => plans.getAttribute('aria-busy')).toBe('false');
    const before = await seen.innerText();
    const camera = await page.locator('.mark[aria-label^="Camera"]').boundingBox();
    if (!camera) throw new Error('no camera on the plan');
    const [x, y] = [camera.x + camera.width / 2, camera.y + camera.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    for (let i = 1; i <= 5; i++) await page.mouse.move(x, y - 4 * i);
    const undo = page.getByRole('button', { name: 'Undo' });
    expect(await seen.innerText()).toBe(before);
    expect(await plans.getAttribute('aria-busy')).toBe('false');
    await page.mouse.up();
    await expect.poll(() => undo.isEnabled()).toBe(true);
    await expect.poll(() => seen.innerText()).not.toBe(before);
    await expect.poll(() => plans.getAttribute('aria-busy')).toBe('false');
    expect(app.faults).toEqual([]);
    await app.close();
  });
});
