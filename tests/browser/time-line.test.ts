import type { Browser, Locator } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppPage } from './app-page.ts';
import { launch, leave } from './browser.ts';

const frameNames = (app: AppPage) =>
  app.page
    .getByRole('group', { name: 'What the viewfinder shows' })
    .locator(':scope > button')
    .allInnerTexts()
    .then((texts) => texts.filter((text) => text !== 'Blend'));

/** The row of a pass on the time line. */
const row = (app: AppPage, name: string) => app.page.locator(`.time-row[aria-label="${name}"]`);
const field = (app: AppPage, name: string, label: string) => row(app, name).getByLabel(label, { exact: true });

const type = async (into: Locator, text: string) => {
  await into.fill(text);
  await into.press('Enter');
};

/** Drags from the middle of something by some pixels to the right. */
const drag = async (app: AppPage, thing: Locator, pixels: number, keys: readonly string[] = []) => {
  const box = await thing.boundingBox();
  if (!box) throw new Error('not on the page');
  const { mouse, keyboard } = app.page;
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await mouse.move(x, y);
  await mouse.down();
  for (const key of keys) await keyboard.down(key);
  for (let i = 1; i <= 6; i++) await mouse.move(x + (pixels * i) / 6, y);
  await mouse.up();
  for (const key of keys) await keyboard.up(key);
};

/** Red, green and blue of a small picture, row by row. */
const pixels = (app: AppPage, name: string): Promise<number[]> =>
  app.page.getByRole('img', { name, exact: true }).evaluate((element) => {
    const canvas = element as HTMLCanvasElement;
    const { data } = canvas.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height) ?? { data: [] };
    return [...data].filter((_, i) => i % 4 < 3);
  });

const brightest = (values: readonly number[]): number => values.reduce((most, value) => Math.max(most, value), 0);

/** What the journey changes, as it is on the page. */
const state = async (app: AppPage) => ({
  frames: await frameNames(app),
  times: await app.page
    .locator('.time-side input')
    .evaluateAll((inputs) => inputs.map((input) => (input as HTMLInputElement).value)),
  blend: await app.page.locator('.blend > .unfold').innerText(),
  weights: await app.page
    .locator('.blend-parts :is(input, select)')
    .evaluateAll((inputs) => inputs.map((input) => (input as HTMLInputElement).value)),
  total: await app.page.locator('.time-total').innerText(),
});

const left = 'Rim from the left';
const right = 'Rim from the right';

describe('the night on its clock', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => leave(browser));

  it('shows in the blend what counts there: a frame alone, on the ground alone', async () => {
    const app = await AppPage.open(browser, { samples: 1, width: 1440, height: 900 });
    const { page } = app;
    await page.locator('.blend > .unfold').click();
    await page.getByRole('img', { name: 'The blend' }).waitFor();
    const part = (name: string) => page.getByRole('group', { name: `${name} in the blend` });
    await app.settled();
    const both = await pixels(app, 'The blend');
    expect(both).not.toEqual(await pixels(app, 'Sky alone'));
    await type(part('Painted').getByLabel('Weight'), '0');
    await expect.poll(() => part('Painted').innerText()).toMatch(/no light/);
    await app.settled();
    // lightened by nothing, the sky frame is what it was
    expect(await pixels(app, 'The blend')).toEqual(await pixels(app, 'Sky alone'));
    await part('Sky').getByLabel('Counts').selectOption({ label: 'on the ground alone' });
    await app.settled();
    const [ground, sky] = [await pixels(app, 'The blend'), await pixels(app, 'Sky alone')];
    // the top row is sky, the bottom row is ground
    expect(brightest(ground.slice(0, 400))).toBe(0);
    expect(brightest(sky.slice(0, 400))).toBeGreaterThan(20);
    expect(ground.slice(-400)).toEqual(sky.slice(-400));
    expect(brightest(sky.slice(-400))).toBeGreaterThan(0);
    expect(app.faults).toEqual([]);
    await app.close();
  });

  it('names, moves, copies and deletes frames; the last one stays', async () => {
    const app = await AppPage.open(browser, { samples: 1 });
    const { page } = app;
    const list = page.locator('.frames-drop');
    const press = (name: string) => list.getByRole('button', { name, exact: true }).click();
    const open = () => list.locator('summary').click();
    await page.getByRole('button', { name: 'Painted', exact: true }).click();
    await open();
    await type(list.getByLabel('Name of the frame'), 'Stones');
    await press('Earlier');
    expect(await frameNames(app)).toEqual(['Stones', 'Sky']);
    expect(await list.getByRole('button', { name: 'Earlier' }).isDisabled()).toBe(true);
    await press('Duplicate');
    expect(await frameNames(app)).toEqual(['Stones', 'Stones 2', 'Sky']);
    expect(await page.getByRole('button', { name: 'Stones 2', exact: true }).getAttribute('aria-pressed')).toBe('true');
    for (const left of [['Stones', 'Sky'], ['Sky']]) {
      await page
        .getByRole('button', { name: /^Stones/ })
        .last()
        .click();
      await open();
      await press('Delete');
      expect(await frameNames(app)).toEqual(left);
    }
    await open();
    expect(await list.getByRole('button', { name: 'Delete', exact: true }).count()).toBe(0);
    await page.keyboard.press('Escape');
    for (let i = 0; i < 5; i++) await page.getByRole('button', { name: 'Undo' }).click();
    expect(await frameNames(app)).toEqual(['Sky', 'Painted']);
    expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);
    expect(app.faults).toEqual([]);
    await app.close();
  });

  it('adds a frame, drags and types times, sees a walk that does not fit, blends, and takes all of it back', async () => {
    const app = await AppPage.open(browser, { samples: 1, width: 1440, height: 900 });
    const { page } = app;
    await page.locator('.menu summary').click();
    await page.locator('[data-sample="lone-tree"]').click();
    await page.getByRole('tab', { name: /^Both in one long frame/ }).click();
    await page.locator('.time-toggle').click();
    await page.locator('.blend > .unfold').click();
    await expect.poll(() => row(app, right).innerText()).toMatch(/walk \d+ s · .* to spare/);
    const before = await state(app);
    let edits = 0;

    // a walk that takes too long is told by word and shape
    await page.locator('.slip-head', { hasText: 'clothes' }).click();
    await page.getByRole('button', { name: 'Rough ground 0.5' }).click();
    edits++;
    await expect.poll(() => row(app, right).innerText()).toMatch(/walk 37 s · 6\.\d s too late/);
    expect(await row(app, right).getByRole('img', { name: 'Danger' }).count()).toBe(1);
    // and so does the way from the camera, which is set otherwise for this frame than for the sky
    expect(await page.locator('.time-total').innerText()).toMatch(/2 walks are too long/);

    // the end of a bar, dragged: to the half second, as one step of the history
    const bar = row(app, left).getByRole('button', { name: /, on from 1 to 14 s/ });
    const wide = (await bar.locator('rect').first().boundingBox())?.width ?? 0;
    const end = row(app, left).getByRole('slider', { name: `${left} off` });
    const pixelsPerSecond = wide / 13;
    await drag(app, end, -6.9 * pixelsPerSecond);
    edits++;
    expect(await field(app, left, 'Off').inputValue()).toBe('7');
    expect(await field(app, left, 'On').inputValue()).toBe('1');
    expect(await row(app, left).getByRole('button', { pressed: true }).count()).toBe(2);
    await expect.poll(() => row(app, right).innerText()).toMatch(/to spare/);
    expect(await row(app, right).getByRole('img', { name: 'Danger' }).count()).toBe(0);

    // a whole bar keeps its length, and is free with Shift; Escape takes a drag back
    const whole = row(app, left).locator('.time-bar rect').first();
    await drag(app, whole, 3.3 * pixelsPerSecond, ['Shift']);
    edits++;
    const [on, off] = await Promise.all(['On', 'Off'].map((label) => field(app, left, label).inputValue()));
    expect(Number(on)).toBeCloseTo(4.3, 1);
    expect(Number(off) - Number(on)).toBeCloseTo(6, 6);
    await page.mouse.move(0, 0);
    const box = await whole.boundingBox();
    await page.mouse.move((box?.x ?? 0) + 20, (box?.y ?? 0) + 5);
    await page.mouse.down();
    await page.mouse.move((box?.x ?? 0) + 120, (box?.y ?? 0) + 5);
    await page.keyboard.press('Escape');
    await page.mouse.up();
    expect(await field(app, left, 'On').inputValue()).toBe(on);

    // by keys and typed
    await row(app, right)
      .getByRole('slider', { name: `${right} on` })
      .focus();
    await page.keyboard.press('ArrowLeft');
    edits++;
    expect(await field(app, right, 'On').inputValue()).toBe('43.5');
    await type(field(app, left, 'On'), '2.25');
    edits++;
    await type(page.getByRole('region', { name: 'Frame Painted' }).getByLabel('Delay'), '45');
    edits++;
    await expect.poll(() => page.locator('.time-order').innerText()).toMatch(/0:53\s*2 Painted · 55\ss/);

    // another frame, in its turn
    await page.locator('.frames-drop summary').click();
    await page.getByRole('button', { name: /^Sky frame/ }).click();
    edits++;
    expect(await frameNames(app)).toEqual(['Sky', 'Painted', 'Sky 2']);
    expect(await page.getByRole('button', { name: 'Sky 2', exact: true }).getAttribute('aria-pressed')).toBe('true');
    await page.getByRole('button', { name: 'Show Painted' }).click();
    expect(await page.getByRole('button', { name: 'Painted', exact: true }).getAttribute('aria-pressed')).toBe('true');

    // what counts in the blend, and where
    await page.getByRole('button', { name: 'Blend', exact: true }).click();
    expect(await page.locator('.blend > .unfold').innerText()).toMatch(/lighten · all 3 frames/);
    const part = (name: string) => page.getByRole('group', { name: `${name} in the blend` });
    await type(part('Painted').getByLabel('Weight'), '2');
    edits++;
    expect(await part('Painted').innerText()).toMatch(/\+1\.0 stops/);
    expect(await part('Painted').getByLabel('Feather').count()).toBe(0);
    await part('Painted').getByLabel('Counts').selectOption({ label: 'on Oak' });
    edits++;
    await type(part('Painted').getByLabel('Feather'), '40');
    edits++;
    await part('Sky 2').getByRole('checkbox').uncheck();
    edits++;
    await page
      .getByRole('group', { name: 'How the frames are blended' })
      .getByRole('button', { name: 'Average' })
      .click();
    edits++;
    expect(await page.locator('.blend > .unfold').innerText()).toMatch(/average · 2 of 3 frames/);
    expect(await page.locator('.blend-picture canvas').count()).toBe(4);
    await app.keepScreenshot('time-line-and-blend');

    for (let i = 0; i < edits; i++) await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => state(app)).toEqual(before);
    expect(app.faults).toEqual([]);
    await app.close();
  });
});
