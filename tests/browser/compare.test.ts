import { readFileSync } from 'node:fs';
import { decode } from 'fast-png';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { differenceBands } from '../../app/web/render/stops-bands.ts';
import { AppPage, differingShare } from './app-page.ts';
import { launch, leave } from './browser.ts';

const stonesText = readFileSync('assets/setups/three-stones.json', 'utf8');

/** The stones lit in six ways: four have the same key lamp in the same place, two of them with a fill besides. */
const sixSchemes = (): string => {
  const setup = JSON.parse(stonesText);
  const [side] = setup.schemes;
  const [sky, painted] = side.frames;
  const [key] = painted.passes;
  const at = (id: string, east: number, north: number, up: number) => ({
    ...key,
    id,
    name: id,
    waypoints: [{ ...key.waypoints[0], position: [east, north, up] }],
  });
  const dimmed = { ...key, levelPercent: 30, gels: [] };
  const passes = [
    [key],
    [key, at('fill-left', -5, 5, 1)],
    [dimmed],
    [dimmed, at('fill-front', 0.5, 0.5, 1.4)],
    [at('front', 1, 0, 1.4)],
    [at('back', 1, 14, 0.3)],
  ];
  setup.schemes = passes.map((each, n) => ({
    ...side,
    id: `way-${n}`,
    name: `Way ${n}`,
    frames: [sky, { ...painted, passes: each }],
  }));
  return JSON.stringify(setup);
};

describe('schemes side by side', () => {
  let browser: Browser;
  let app: AppPage;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => leave(browser));

  const open = async () => {
    app = await AppPage.open(browser, { samples: 2 });
    await app.page.getByRole('button', { name: 'Compare', exact: true }).click();
    await app.settled();
  };
  const close = async () => {
    expect(app.faults).toEqual([]);
    await app.close();
  };
  /** What a screen shows, pixel by pixel. */
  const pixels = async (selector: string): Promise<Uint8Array> => {
    const url = await app.page
      .locator(`${selector} canvas`)
      .evaluate((canvas) => (canvas as HTMLCanvasElement).toDataURL('image/png'));
    return decode(Buffer.from(url.split(',')[1] as string, 'base64')).data as Uint8Array;
  };
  const tile = (id: string) => `.tile[data-scheme="${id}"]`;
  const names = () => app.page.locator('.tile .tile-name').allInnerTexts();
  const drop = (text: string) => app.page.locator('.drop summary', { hasText: text });
  const type = async (label: string, text: string) => {
    await app.page.getByLabel(label, { exact: true }).fill(text);
    await app.page.getByLabel(label, { exact: true }).press('Enter');
    await app.settled();
  };
  const button = (name: string) => app.page.getByRole('button', { name, exact: true });

  it('front, side and back stand beside the unlit one; one change of ISO, one step, changes all; undo gives it back', async () => {
    await open();
    await drop('Schemes').click();
    await app.page.getByRole('checkbox', { name: 'Three-quarter back' }).uncheck();
    await app.page.keyboard.press('Escape');
    await app.settled();
    expect(await names()).toEqual(['Side', 'Front', 'Back', 'Unlit']);
    expect(await app.page.getByLabel('Lock exposure').isChecked()).toBe(true);
    const screens = [...['side', 'front', 'back'].map(tile), '.tile-unlit'];
    const before = await Promise.all(screens.map(pixels));
    for (const [i, one] of before.entries())
      for (const other of before.slice(i + 1)) expect(differingShare(one, other)).toBeGreaterThan(0.01);
    await expect.poll(() => app.page.locator(`${tile('side')} .tile-numbers`).innerText()).toMatch(/Target.*stops/s);
    await expect.poll(() => app.page.locator(`${tile('front')} .tile-cautions`).innerText()).toContain('flat');
    const { counters } = await app.probe();
    await app.keepScreenshot('compare-tiles');

    await type('ISO', '1600');
    const after = await Promise.all(screens.map(pixels));
    // two stops, on all that the lamp lights; without a lamp the sky frame stays the brighter one
    for (const [i, one] of after.slice(0, 3).entries())
      expect(differingShare(one, before[i] as Uint8Array)).toBeGreaterThan(0.05);
    expect((await app.probe()).counters).toEqual(counters);
    expect(await app.page.locator('.exposure-note').count()).toBe(0);
    await button('Undo').click();
    await app.settled();
    for (const [i, selector] of screens.entries()) expect(await pixels(selector)).toEqual(before[i]);
    expect(await button('Undo').isDisabled()).toBe(true);
    await close();
  });

  it('unlocked, only the present scheme is exposed otherwise; that is said, and can be made alike', async () => {
    await open();
    await app.page.getByLabel('Lock exposure').uncheck();
    const front = await pixels(tile('front'));
    await type('ISO', '1600');
    expect(await pixels(tile('front'))).toEqual(front);
    const note = app.page.locator('.exposure-note');
    await expect.poll(() => note.innerText()).toMatch(/Not exposed as Side: Front: Painted ISO 400/);
    await note.getByRole('button', { name: 'Make alike' }).click();
    await app.settled();
    expect(await note.count()).toBe(0);
    expect(differingShare(await pixels(tile('front')), front)).toBeGreaterThan(0.2);
    await close();
  });

  it('a press on a name makes that scheme the present one; keys reorder as one step; F2 renames; a copy stands beside', async () => {
    await open();
    await button('Back').click();
    expect(await app.page.locator('.tile[aria-current]').getAttribute('data-scheme')).toBe('back');
    expect(await app.lamp().getAttribute('aria-label')).toContain('at 12:00');
    await button('Front earlier').focus();
    await app.page.keyboard.press('Enter');
    expect((await names()).slice(0, 2)).toEqual(['Front', 'Side']);
    // it can't go further: the focus is on what it can do
    await expect.poll(() => app.page.evaluate(() => document.activeElement?.ariaLabel)).toBe('Front later');
    await button('Undo').click();
    expect((await names()).slice(0, 2)).toEqual(['Side', 'Front']);
    await app.page.locator(`${tile('side')} .tile-name`).focus();
    await app.page.keyboard.press('F2');
    await app.page.keyboard.type('Raking');
    await app.page.keyboard.press('Enter');
    expect((await names())[0]).toBe('Raking');
    await button('Duplicate Raking').click();
    await app.settled();
    expect((await names()).slice(0, 3)).toEqual(['Raking', 'Raking 2', 'Front']);
    expect(await app.page.locator('.tile[aria-current]').getAttribute('aria-label')).toBe('Raking 2');
    await close();
  });

  it('a tile dragged by its head takes another’s place as one step; Escape leaves it', async () => {
    await open();
    const middle = async (id: string) => {
      const box = await app.page.locator(`${tile(id)} .tile-name`).boundingBox();
      if (!box) throw new Error(`no tile ${id}`);
      return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    };
    const drag = async (end: () => Promise<void>) => {
      const [from, to] = [await middle('side'), await middle('front')];
      await app.page.mouse.move(from.x, from.y);
      await app.page.mouse.down();
      await app.page.mouse.move(to.x, to.y, { steps: 5 });
      await end();
      await app.page.mouse.up();
    };
    await drag(() => app.page.keyboard.press('Escape'));
    expect((await names()).slice(0, 2)).toEqual(['Side', 'Front']);
    await drag(async () => expect(await app.page.locator('.tile[data-drag="after"]').count()).toBe(1));
    expect((await names()).slice(0, 2)).toEqual(['Front', 'Side']);
    await button('Undo').click();
    expect((await names()).slice(0, 2)).toEqual(['Side', 'Front']);
    await close();
  });

  it('the wipe goes by arrow keys, Home and End: at the ends it shows one picture alone', async () => {
    await open();
    await button('Wipe').click();
    await app.page.getByLabel('A', { exact: true }).selectOption('side');
    await app.page.getByLabel('B', { exact: true }).selectOption('back');
    await app.settled();
    const wipe = app.page.getByLabel('Wipe between Side and Back');
    const seen = async () => decode(await app.page.locator('.pair-picture').screenshot()).data as Uint8Array;
    await wipe.focus();
    await app.page.keyboard.press('ArrowRight');
    expect(await wipe.inputValue()).toBe('51');
    await app.page.keyboard.press('Home');
    const back = await seen();
    await app.page.keyboard.press('End');
    const side = await seen();
    expect(differingShare(back, side)).toBeGreaterThan(0.05);
    for (let i = 0; i < 50; i++) await app.page.keyboard.press('ArrowLeft');
    expect(await wipe.inputValue()).toBe('50');
    const half = await seen();
    expect(differingShare(half, side)).toBeGreaterThan(0.02);
    expect(differingShare(half, back)).toBeGreaterThan(0.02);
    await app.keepScreenshot('compare-wipe');
    await close();
  });

  it('the difference has brighter and darker bands with numbers; of a scheme and its copy nothing is left', async () => {
    await open();
    await button('Duplicate').click();
    await button('Difference').click();
    await app.page.getByLabel('A', { exact: true }).selectOption('side');
    await app.page.getByLabel('B', { exact: true }).selectOption('front');
    await app.settled();
    const countOf = (data: Uint8Array, hex: string) => {
      const [r, g, b] = [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));
      let count = 0;
      for (let i = 0; i < data.length; i += 4) if (data[i] === r && data[i + 1] === g && data[i + 2] === b) count++;
      return count;
    };
    const between = await pixels('.pair-picture');
    for (const colour of differenceBands.colours) expect(countOf(between, colour)).toBeGreaterThan(20);
    const key = await app.page.locator('.level-key').innerText();
    for (const words of ['≤ −4', '−1', '0', '+1', '≥ +4', '+ Side is brighter']) expect(key).toContain(words);
    await app.keepScreenshot('compare-difference');
    await app.page.getByLabel('B', { exact: true }).selectOption('side-2');
    await app.settled();
    const none = await pixels('.pair-picture');
    expect(countOf(none, differenceBands.colours[4] as string)).toBe(none.length / 4);
    await close();
  });

  it('six tiles, four of which share a key lamp, trace the distinct passes and one sky', async () => {
    app = await AppPage.open(browser, { samples: 2 });
    await app.openText('six.lampfall.json', sixSchemes());
    await app.page.getByRole('tab', { name: 'Way 5' }).waitFor();
    const before = (await app.settled()).counters.light;
    await button('Compare').click();
    await app.page.locator(tile('way-5')).waitFor();
    const { layers, counters } = await app.settled();
    expect(await app.page.locator('.tile').count()).toBe(7);
    // key, two fills, front, back; the sky as light, and where it is seen
    expect(layers).toBe(7);
    const traced = Object.keys(counters.light).filter((label) => counters.light[label] !== before[label]);
    expect(traced.length).toBe(7);
    await close();
  });

  it('three lenses are made in one step, each with its own camera, which goes back for a longer lens; undo takes them away', async () => {
    await open();
    await drop('Make').click();
    await app.page.getByRole('button', { name: 'Lenses 24 · 50 · 85 mm' }).click();
    await app.settled();
    expect(await names()).toEqual(['Side · 24 mm', 'Side · 50 mm', 'Side · 85 mm', 'Unlit']);
    const [wide, long] = [await pixels(tile('side-2')), await pixels(tile('side-4'))];
    expect(differingShare(wide, long)).toBeGreaterThan(0.05);
    await app.page.locator('.slip-head', { hasText: 'Own camera' }).click();
    const north = async () => Number(await app.page.getByLabel('Scene’s north', { exact: true }).inputValue());
    expect(await north()).toBe(0);
    await app.page.getByLabel('Other lens', { exact: true }).fill('48');
    await app.page.keyboard.press('Enter');
    expect(await app.page.getByLabel('Focal length').inputValue()).toBe('48');
    // twice the lens, twice as far from the stone: 8 m more, but for the height
    expect(Math.abs((await north()) + 8)).toBeLessThan(0.05);
    await button('The setup’s camera').click();
    expect(await app.page.getByLabel('Focal length').inputValue()).toBe('24');
    for (let i = 0; i < 3; i++) await button('Undo').click();
    expect(await names()).toEqual(['Side', 'Front', 'Three-quarter back', 'Back', 'Unlit']);
    await close();
  });
});
