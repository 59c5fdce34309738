import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppPage } from './app-page.ts';
import { launch, leave } from './browser.ts';

const press = (app: AppPage, name: string | RegExp) =>
  app.page.getByRole('button', { name, ...(typeof name === 'string' ? { exact: true } : {}) }).click();

const openHour = (app: AppPage) => app.page.locator('.hour-strip > .unfold').click();

/** Types into a field and leaves it by Enter. */
const type = async (app: AppPage, label: string | RegExp, text: string) => {
  const field = app.page.getByLabel(label, typeof label === 'string' ? { exact: true } : {});
  await field.fill(text);
  await field.press('Enter');
};

const row = (app: AppPage, section: string, name: string) =>
  app.page
    .getByRole('region', { name: section })
    .locator('.row')
    .filter({ has: app.page.locator('dt', { hasText: new RegExp(`^${name}$`) }) })
    .locator('dd')
    .innerText();

const undos = (app: AppPage) => press(app, 'Undo');

describe('place and hour', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => leave(browser));

  /** Opens the night under the picture and the strip of the place, at a dark site in the south, 20 August 2026, 20:30. */
  const inTheSouth = async (size: object = { width: 1440, height: 900 }) => {
    const app = await AppPage.open(browser, { samples: 1, ...size });
    await openHour(app);
    await press(app, 'Place');
    await type(app, 'Coordinates', '33° 00′ S, 149° 00′ E');
    await expect.poll(() => app.page.getByLabel(/^Zone/).inputValue()).toBe('Australia/Sydney');
    await type(app, /^Date/, '20 Aug 2026');
    await type(app, 'Time', '20:30');
    return app;
  };

  it('is set by text: the zone goes along with the coordinates, and moon and core stand where they should', async () => {
    const app = await inTheSouth();
    // worked scene: moon 56.0 degrees up at 272.9, lit 0.53, by two libraries that agree to 0.002 degrees
    expect(await row(app, 'At that hour', 'Moon')).toBe('56° up, 273° W');
    expect(await row(app, 'This night', 'Its phase')).toMatch(/^first quarter, 5\d % lit$/);
    expect(await app.page.locator('.hour-bar').innerText()).toContain('UTC+10:00 Australia/Sydney');
    expect(await app.page.locator('[data-sky="moon"] text').textContent()).toBe('moon 56°');
    // three steps back: time, date, place with its zone
    for (let n = 0; n < 3; n++) await undos(app);
    expect(await app.page.getByLabel(/^Zone/).inputValue()).toBe('Europe/London');
    expect(await app.page.getByLabel('Coordinates', { exact: true }).inputValue()).toBe('54.40000° N, 2.60000° W');
    expect(app.faults).toEqual([]);
    await app.close();
  });

  it('keeps what cannot be read, and says why', async () => {
    const app = await inTheSouth();
    await type(app, 'Coordinates', '95 N 10 E');
    const field = app.page.getByLabel('Coordinates', { exact: true });
    expect(await field.inputValue()).toBe('95 N 10 E');
    expect(await field.getAttribute('aria-invalid')).toBe('true');
    await expect.poll(() => app.page.getByRole('alert').first().innerText()).toMatch(/90/);
    await field.press('Escape');
    expect(await field.inputValue()).toBe('33.00000° S, 149.00000° E');
    await type(app, 'Time', '20:90');
    expect(await app.page.getByLabel('Time', { exact: true }).inputValue()).toBe('20:90');
    await app.close();
  });

  it('the hour is stepped by keys and dragged, numbers and marks follow, and a drag is one step back', async () => {
    const app = await inTheSouth();
    const slider = app.page.getByRole('slider', { name: 'Hour' });
    const time = app.page.getByLabel('Time', { exact: true });
    await slider.focus();
    await app.page.keyboard.press('ArrowRight');
    await app.page.keyboard.press('Shift+ArrowRight');
    await app.page.keyboard.press('PageUp');
    await expect.poll(() => time.inputValue()).toBe('21:41');
    expect(await slider.getAttribute('aria-valuetext')).toMatch(/^21:41, dark · moon 4\d° up/);
    expect(await row(app, 'At that hour', 'Moon')).toMatch(/^4\d° up, 2\d\d° W$/);
    const box = await slider.locator('.night-target').boundingBox();
    const hand = await slider.locator('.night-handle').boundingBox();
    if (!box || !hand) throw new Error('no scrubber');
    const y = box.y + box.height / 2;
    await app.page.mouse.move(hand.x + hand.width / 2, y);
    await app.page.mouse.down();
    for (const share of [0.5, 0.55, 0.6]) await app.page.mouse.move(box.x + share * box.width, y);
    await app.page.mouse.up();
    const dragged = await time.inputValue();
    expect(dragged > '01:30' && dragged < '03:30').toBe(true);
    // it sets at 01:23 that night
    expect(await app.page.locator('[data-sky="moon"]').count()).toBe(0);
    await undos(app);
    expect(await time.inputValue()).toBe('21:41');
    await press(app, /Night after/);
    await expect.poll(() => app.page.getByLabel(/^Date/).inputValue()).toBe('2026-08-21');
    await app.close();
  });

  it('finds the nights on which the core stands over the subject, and goes to one', async () => {
    const app = await inTheSouth();
    // it never stands in the south: its declination of -29 takes it down at 237 degrees, and over the zenith's north side
    await type(app, 'Camera looks to, true', '180');
    await press(app, 'Find nights');
    await expect.poll(() => app.page.locator('.core-nights').innerText()).toMatch(/it never stands there/);
    await type(app, 'Camera looks to, true', '250');
    expect(await app.page.locator('.core-nights').innerText()).toMatch(/The question has changed/);
    expect(await app.page.getByLabel('Scene’s north, true', { exact: true }).inputValue()).toMatch(/^248\.\d$/);
    await press(app, 'Find nights');
    const first = app.page.locator('.core-list button').first();
    await expect
      .poll(() => first.innerText())
      .toMatch(/^\w{3} \d+ \w{3} 202[67] · \d\d:\d\d to \d\d:\d\d · .*° up · moon down$/);
    await first.click();
    const core = await row(app, 'At that hour', 'Core');
    const bearing = Number(/(\d+)° \w+$/.exec(core)?.[1]);
    expect(Math.abs(bearing - 250)).toBeLessThanOrEqual(15.5);
    expect(await row(app, 'At that hour', 'Now')).toBe('dark');
    expect(await row(app, 'At that hour', 'Moon')).toMatch(/below|on the horizon/);
    await undos(app);
    expect(await app.page.getByLabel('Time', { exact: true }).inputValue()).toBe('20:30');
    await app.close();
  });

  it('a town’s glow is added, told as a meter tells it, and stands at the plan’s edge', async () => {
    const app = await inTheSouth();
    await press(app, 'Add a town');
    const town = app.page.getByRole('group', { name: 'Glow of Town' });
    await town.getByLabel('Bearing, true').fill('100');
    await town.getByLabel('Bearing, true').press('Enter');
    await town.getByText('From people and distance').click();
    await town.getByLabel('People').fill('200,000');
    await town.getByLabel('People').press('Enter');
    await town.getByRole('button', { name: /^Take/ }).click();
    // 0.2 million x 4.6e-2 cd/m2 x 1.5^-2.76 (sky.md 4.7) = 3.0e-3 cd/m2
    await expect.poll(() => town.getByLabel(/^Brightness 10° up/).inputValue()).toBe('18.9');
    expect(await app.page.locator('[data-sky="glow"] text').textContent()).toBe('Town');
    await press(app, 'Delete Town');
    expect(await app.page.locator('[data-sky="glow"]').count()).toBe(0);
    await app.close();
  });

  it('a plain sky has the moon that is stated, and what was typed for the other comes back', async () => {
    const app = await inTheSouth();
    await type(app, /^Darkness/, '21');
    await press(app, 'Plain sky');
    expect(await app.page.locator('[data-sky="moon"]').count()).toBe(0);
    await app.page.getByLabel('Moonlight', { exact: true }).check();
    await expect.poll(() => app.page.locator('[data-sky="moon"] text').textContent()).toBe('moon 35°');
    await press(app, 'Sky of that hour');
    expect(await app.page.getByLabel(/^Darkness/).inputValue()).toBe('21');
    await app.close();
  });

  it('asks nothing of any network but its own server, also for zone and compass', async () => {
    const app = await inTheSouth();
    await expect
      .poll(() => app.page.locator('.north-fields').innerText())
      .toMatch(/A compass points 1[12]\.\d° east .*WMM/);
    expect(app.faults).toEqual([]);
    await app.close();
  });

  it('on a phone it stands in the room of time', async () => {
    const app = await AppPage.open(browser, { samples: 1, width: 390, height: 844 });
    expect(await app.page.locator('.hour-strip').isVisible()).toBe(false);
    await press(app, 'Time');
    await openHour(app);
    expect(await app.page.getByRole('slider', { name: 'Hour' }).isVisible()).toBe(true);
    expect(await app.page.locator('#place').isVisible()).toBe(true);
    expect(await app.page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
    await app.close();
  });
});
