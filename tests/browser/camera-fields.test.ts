import { readFileSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppPage, differingShare } from './app-page.ts';
import { launch, leave } from './browser.ts';

/** The stones under a torch of 2700 K without a gel, wide open at a high ISO: the stones burn. */
const burntStones = (): string => {
  const setup = JSON.parse(readFileSync('assets/setups/three-stones.json', 'utf8'));
  setup.lamps[0].temperatureKelvin = 2700;
  const frame = setup.schemes[0].frames[1];
  Object.assign(frame, { aperture: 2.8, iso: 1600 });
  frame.passes[0].gels = [];
  return JSON.stringify(setup);
};

/** The stones painted faintly at an ISO so high that a pixel is full with a few dozen electrons. */
const noisyStones = (): string => {
  const setup = JSON.parse(readFileSync('assets/setups/three-stones.json', 'utf8'));
  const frame = setup.schemes[0].frames[1];
  Object.assign(frame, { aperture: 32, iso: 204800 });
  Object.assign(frame.passes[0], { levelPercent: 10, off: frame.passes[0].on + 1 });
  return JSON.stringify(setup);
};

describe('camera, frame line and count in the page', () => {
  let browser: Browser;
  let app: AppPage;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => leave(browser));

  const open = async (samples: number, text?: string) => {
    app = await AppPage.open(browser, { width: 1000, height: 700, samples });
    if (text) {
      await app.openText('burnt.lampfall.json', text);
      await app.page.getByRole('button', { name: 'Close this message' }).click();
    }
    await app.settled();
  };
  const close = async () => {
    expect(app.faults).toEqual([]);
    await app.close();
  };
  const openCamera = () => app.page.locator('.slip-head', { hasText: 'Camera' }).click();
  const type = async (label: string | RegExp, text: string) => {
    const field = app.page.getByLabel(label, { exact: typeof label === 'string' });
    await field.fill(text);
    await field.press('Enter');
  };
  /** The picture with the page scrolled to its top, so that its edge pixels are the same ones each time. */
  const picture = async () => {
    await app.page.evaluate(() => scrollTo(0, 0));
    return app.picture();
  };
  /** Switches a check on or off and returns the picture when it is done. */
  const check = async (label: string, isOn: boolean) => {
    await app.page.getByLabel(label).setChecked(isOn);
    await app.settled();
    return picture();
  };

  it('a sensor is chosen by its trade name or typed; the depth line follows, and undo brings it back', async () => {
    await open(1);
    await openCamera();
    const before = await picture();
    const depth = () => app.page.locator('.depth-line').innerText();
    const first = await depth();
    const sensor = app.page.getByLabel('Sensor', { exact: true });
    expect(await sensor.inputValue()).toBe('full frame');
    expect(await app.page.getByLabel('Sensor width').count()).toBe(0);
    await sensor.selectOption('Four Thirds');
    await app.settled();
    const box = await app.page.locator('.picture canvas').boundingBox();
    // the picture takes the sensor's shape, to a pixel's rounding
    expect((box?.width ?? 0) / (box?.height ?? 1)).toBeCloseTo(17.3 / 13, 1);
    await expect.poll(depth).not.toBe(first);
    await sensor.selectOption('other');
    expect(await app.page.getByLabel('Sensor width').inputValue()).toBe('17.3');
    await type('Sensor width', '36');
    await type('Sensor height', '2.4 cm');
    expect(await sensor.inputValue()).toBe('other');
    // one step for the preset, one for each number
    for (let i = 0; i < 3; i++) await app.page.getByRole('button', { name: 'Undo' }).click();
    await app.settled();
    expect(differingShare(before, await picture())).toBe(0);
    await expect.poll(depth).toBe(first);
    await close();
  });

  it('noise, dark corners and highlights change the picture and trace nothing; off, the old picture is back', async () => {
    for (const [label, setup] of [
      ['Noise', noisyStones()],
      ['Dark corners', burntStones()],
    ] as const) {
      await open(2, setup);
      await openCamera();
      const before = await picture();
      expect(differingShare(before, await check(label, true)), label).toBeGreaterThan(0.01);
      expect(differingShare(before, await check(label, false)), label).toBe(0);
      await close();
    }
    await open(2, burntStones());
    const { counters } = await app.probe();
    await openCamera();
    const before = await picture();
    await app.page.getByLabel('Highlights').selectOption('plain');
    await app.settled();
    expect(differingShare(before, await picture())).toBeGreaterThan(0.001);
    expect((await app.probe()).counters).toEqual(counters);
    await close();
  });

  it('without focus blur a new aperture traces nothing; with it, it traces, and the picture goes soft', async () => {
    await open(2);
    const start = await app.probe();
    await type('Aperture', '2');
    const sharp = await app.settled();
    expect(sharp.counters).toEqual(start.counters);
    await type('Focus', '1');
    await openCamera();
    await app.settled();
    const before = await picture();
    expect(differingShare(before, await check('Focus blur', true))).toBeGreaterThan(0.005);
    const soft = await app.probe();
    await type('Aperture', '4');
    const after = await app.settled();
    expect(after.counters.hits).toBeGreaterThan(soft.counters.hits);
    expect(after.counters.light['side/key']).toBeGreaterThan(soft.counters.light['side/key'] as number);
    await close();
  });

  it('burnt channels are named, red first under a warm lamp, and marked with strokes that a key explains', async () => {
    await open(1, burntStones());
    await app.page.getByRole('button', { name: 'Painted', exact: true }).click();
    await app.settled();
    const before = await picture();
    const { counters } = await app.probe();
    await expect
      .poll(() => app.page.locator('.burnt-words').innerText())
      .toMatch(/^Burnt: red \d+ %(, green [\d.]+ %)?/);
    expect(await app.page.locator('.burnt-key').count()).toBe(0);
    const marked = await check('Mark burnt', true);
    expect(differingShare(before, marked)).toBeGreaterThan(0.005);
    const key = await app.page.locator('.burnt-key li').allInnerTexts();
    expect(key.map((text) => text.trim())).toEqual(['red full', 'green full', 'blue full']);
    await app.keepScreenshot('stones-burnt-marked');
    expect(differingShare(before, await check('Mark burnt', false))).toBe(0);
    expect((await app.probe()).counters).toEqual(counters);
    await type('ISO', '100');
    await type('Aperture', '16');
    await expect.poll(() => app.page.locator('.burnt-words').innerText()).toBe('nothing burnt');
    await close();
  });

  it('the night level sets the count; a press takes it up', async () => {
    await open(1);
    const count = app.page.locator('.slip-open .slip-count');
    await expect.poll(() => count.innerText()).toMatch(/^count \d+ for −1\.\d stops$/);
    const spoken = async () => Number(/^count (\d+)/.exec(await count.innerText())?.[1]);
    const atNight = await spoken();
    await type('Night level', '-3.5 stops');
    await expect.poll(() => count.innerText()).toMatch(/for −3\.\d stops/);
    // two stops less is a quarter of the light; spoken counts are whole
    expect(await spoken()).toBeLessThanOrEqual(atNight / 2);
    await app.page.locator('.count-line').getByRole('button').click();
    expect(await app.page.locator('.slip-open .count').innerText()).toBe(`${await spoken()} s`);
    await expect.poll(() => app.page.locator('.count-line').getByRole('button').count()).toBe(0);
    await expect.poll(() => app.page.locator('.slip-open .slip-light').innerText()).toMatch(/−3\.\d stops/);
    // no count is short enough for a level that low: the slip says what to do
    await type('ISO', '12800');
    await type('Aperture', '1.4');
    await expect.poll(() => app.page.locator('.count-advice').innerText()).toMatch(/turn the lamp down|too bright/i);
    await close();
  });

  it('light that bounces once changes the picture and traces bounced layers only', async () => {
    await open(2);
    const before = await picture();
    const { counters } = await app.probe();
    await app.page.getByLabel('Bounce').selectOption('1');
    const after = await app.settled();
    const { 'side/key': key, sky } = counters.light;
    expect(after.counters.light).toMatchObject({ 'side/key': key, sky });
    expect(after.counters.light['side/key bounced']).toBeGreaterThanOrEqual(2);
    expect(differingShare(before, await picture(), 1)).toBeGreaterThan(0.01);
    await app.page.getByLabel('Bounce').selectOption('0');
    await app.settled();
    expect(differingShare(before, await picture())).toBe(0);
    await close();
  });

  it('says what is sharp; a focus step and the hyperfocal distance are taken up by a press', async () => {
    await open(1);
    await type('Aperture', '1.4');
    await type('Focus', '2');
    const line = app.page.locator('.depth-line');
    await expect.poll(() => line.innerText()).toMatch(/Not sharp: the farthest thing, .*Needs \d focus steps/s);
    const step = app.page.getByRole('group', { name: 'Focus steps' }).getByRole('button').last();
    const metres = Number((await step.innerText()).replace(' m', ''));
    await step.click();
    expect(Number(await app.page.getByLabel('Focus', { exact: true }).inputValue())).toBeCloseTo(metres, 0);
    await app.page.getByRole('button', { name: 'Focus there' }).click();
    await expect.poll(() => line.innerText()).toContain('to infinity');
    await app.page.locator('.star-line summary').click();
    expect(await app.page.locator('.star-line tbody tr').count()).toBe(4);
    await expect.poll(() => app.page.locator('.star-line').innerText()).toMatch(/500 ÷ f.*20\.8 s/);
    await close();
  });
});
