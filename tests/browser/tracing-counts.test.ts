import { readFileSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppPage } from './app-page.ts';
import { launch, leave } from './browser.ts';

/** The stones with six torches in one frame, at six places of the clock. */
const sixLamps = (): string => {
  const setup = JSON.parse(readFileSync('assets/setups/three-stones.json', 'utf8'));
  const frame = setup.schemes[0].frames[1];
  const [key] = frame.passes;
  frame.passes = [0, 1, 2, 3, 4, 5].map((n) => {
    const turn = (n * Math.PI) / 3;
    const position = [0.2 + 5 * Math.cos(turn), 7.75 + 5 * Math.sin(turn), 0.8];
    return { ...key, id: `lamp-${n}`, name: `Lamp ${n}`, waypoints: [{ ...key.waypoints[0], position }] };
  });
  return JSON.stringify(setup);
};

describe('what a change traces, with six lamps', () => {
  let browser: Browser;
  let app: AppPage;
  beforeAll(async () => {
    browser = await launch();
    app = await AppPage.open(browser, { width: 940, height: 460, samples: 2 });
    await app.openText('six.lampfall.json', sixLamps());
    await app.page.waitForFunction(() => document.querySelectorAll('.lamp-disc').length === 6);
    await app.settled();
  });
  afterAll(() => leave(browser));

  const type = async (label: string | RegExp, text: string) => {
    const field = app.page.getByLabel(label, { exact: typeof label === 'string' });
    await field.fill(text);
    await field.press('Enter');
    return app.settled();
  };

  it.each([
    ['level', 'Level', '40'],
    ['seconds of the pass', 'Count', '3'],
    ['aperture', 'Aperture', '5.6'],
    ['ISO', 'ISO', '800'],
    ['shutter time', 'Shutter', '20'],
    ['white balance', 'White balance', '3200'],
  ])('changing the %s traces nothing and shows a new picture', async (_, label, text) => {
    const before = await app.settled();
    const after = await type(label, text);
    expect(after.counters).toEqual(before.counters);
    expect(after.developed).toBeGreaterThan(before.developed);
  });

  it('changing the gel traces nothing and shows a new picture', async () => {
    const before = await app.settled();
    await app.page.getByLabel('Gel').selectOption('Full CTO');
    const after = await app.settled();
    expect(after.counters).toEqual(before.counters);
    expect(after.developed).toBeGreaterThan(before.developed);
  });

  it('dragging one lamp traces that lamp’s layer only, over first hits that are kept', async () => {
    const before = await app.settled();
    await app.dragLamp(4, 0.7, 'Lamp 2');
    const after = await app.settled();
    const traced = Object.keys(after.counters.light).filter(
      (id) => after.counters.light[id] !== before.counters.light[id],
    );
    expect(traced).toEqual(['side/lamp-2']);
    expect(after.counters.light['side/lamp-2']).toBeGreaterThan(before.counters.light['side/lamp-2'] as number);
    // a coarse picture may need its own first hits once; the full picture's are kept
    expect(after.counters.hits - before.counters.hits).toBeLessThanOrEqual(1);
    expect(app.faults).toEqual([]);
  });

  it('undo brings the old place back without tracing: its layer was kept', async () => {
    const before = await app.settled();
    await app.page.getByRole('button', { name: 'Undo' }).click();
    const after = await app.settled();
    expect(after.counters).toEqual(before.counters);
    expect(after.developed).toBeGreaterThan(before.developed);
  });

  it('when converged it does nothing: no tracing and no drawing for two seconds', async () => {
    const before = await app.settled();
    await app.page.waitForTimeout(2000);
    expect(await app.probe()).toEqual(before);
  });
});
