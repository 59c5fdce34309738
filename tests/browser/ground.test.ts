import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppPage, differingShare } from './app-page.ts';
import { launch, leave } from './browser.ts';

describe('the ground', () => {
  let browser: Browser;
  let app: AppPage;
  beforeAll(async () => {
    browser = await launch();
    app = await AppPage.open(browser, { samples: 1, width: 1440, height: 900, pixelRatio: 1 });
    await app.settled();
  });
  afterAll(async () => {
    expect(app.faults).toEqual([]);
    await leave(browser);
  });

  const ground = () => app.page.locator('.slip', { has: app.page.locator('.slip-head strong', { hasText: 'Ground' }) });
  const head = () => ground().locator('.slip-head').innerText();
  const press = (name: string) => ground().getByRole('button', { name, exact: true }).first().click();
  const undo = () => app.page.getByRole('button', { name: 'Undo' }).click();
  const field = (label: string | RegExp) =>
    ground()
      .getByLabel(label, { exact: typeof label === 'string' })
      .first();
  const type = async (label: string | RegExp, text: string) => {
    await field(label).fill(text);
    await field(label).press('Enter');
  };

  it('one word sets finish and relief together: the picture changes; one undo brings the old one back', async () => {
    await ground().locator('.slip-head').click();
    const before = await app.picture();
    await press('Snow');
    await app.settled();
    await expect.poll(head).toContain('Fresh snow · Snow drifts');
    expect(differingShare(before, await app.picture())).toBeGreaterThan(0.2);
    await undo();
    await app.settled();
    expect(differingShare(before, await app.picture())).toBe(0);
  });

  it('a relief is added between camera and subject, its density typed, moved, laid out another way, and removed', async () => {
    await press('Sand');
    await ground().getByText('Add relief').click();
    await ground().getByRole('group', { name: 'Add relief' }).getByRole('button', { name: 'Gravel' }).click();
    await expect.poll(head).toContain('Sand ripples · Gravel');
    await ground().locator('summary', { hasText: 'Gravel' }).click();
    await type('Radius', '3');
    await type('Per square metre', '10');
    await expect.poll(() => field('How many').inputValue()).toBe('283');
    // 283 pieces, one in eight of 20 faces, the others of 6
    await expect.poll(() => ground().innerText()).toContain('2,188 triangles');
    const north = await field('Middle, north').inputValue();
    await press('Round the subject');
    await expect.poll(() => field('Middle, north').inputValue()).not.toBe(north);
    const seed = await field('Variant').inputValue();
    await press('Another');
    await expect.poll(async () => Number(await field('Variant').inputValue())).toBe(Number(seed) + 1);
    await press('Remove gravel');
    await expect.poll(head).not.toContain('Gravel');
  });

  it('says where more ripples than 30,000 triangles draw end', async () => {
    await ground().locator('summary', { hasText: 'Sand ripples' }).click();
    await type('Radius', '60');
    await expect.poll(() => ground().innerText()).toMatch(/Drawn within [\d.]+ m: 30,000 triangles reach no farther/);
  });

  it('a finish is chosen by a word, changed by numbers, and told with its source', async () => {
    await field('Finish').selectOption({ label: 'Wet sand' });
    await ground().getByText('Its numbers').first().click();
    await expect.poll(() => ground().innerText()).toContain('Wet sand: published 20 to 30 %');
    await type(/^Gloss/, '100');
    expect(await field(/^Gloss/).inputValue()).toBe('100');
    await expect.poll(() => ground().innerText()).toContain('Gloss: mirror');
    expect(await field('Finish').inputValue()).toBe('own');
    await type('Refractive index', '1.4');
    await type('Returns', '12');
    expect(await field('Returns').inputValue()).toBe('12');
    await field('Grey').check();
    expect(await ground().getByLabel('Colour', { exact: true }).count()).toBe(0);
    await field('Metal').check();
    expect(await ground().getByLabel('Refractive index').count()).toBe(0);
  });
});
