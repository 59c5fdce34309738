import { readFileSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppPage, differingShare } from './app-page.ts';
import { launch, leave } from './browser.ts';

const good = JSON.parse(readFileSync('assets/setups/three-stones.json', 'utf8'));
const changed = (change: (setup: typeof good) => void): string => {
  const copy = structuredClone(good);
  change(copy);
  return JSON.stringify(copy);
};

/** What may be dropped on the page by mistake or malice, and a word of the message it gets. */
const badFiles: readonly (readonly [string, string | Buffer, RegExp])[] = [
  ['empty', '', /not a setup file/],
  ['a picture', Buffer.from([0x89, 0x50, 0x4e, 0x47, 0, 1, 2, 255]), /not a setup file/],
  ['cut short', JSON.stringify(good).slice(0, 900), /line 1/],
  ['a list', '[1, 2]', /must hold one setup/],
  ['other JSON', '{"hello": 1}', /not a Lampfall setup/],
  ['a newer version', changed((s) => Object.assign(s, { version: 9 })), /version: is 9/],
  [
    'on after off',
    changed((s) => Object.assign(s.schemes[0].frames[1].passes[0], { on: 9.5 })),
    /schemes\[0\]\.frames\[1\]\.passes\[0\]\.on: must be before off/,
  ],
  [
    'a dangling lamp',
    changed((s) => Object.assign(s.schemes[0].frames[1].passes[0], { lampId: 'gone' })),
    /no lamp has the id/,
  ],
  [
    'a negative size',
    changed((s) => Object.assign(s.subjects[0].parts[0], { widthMetres: -1 })),
    /subjects\[0\]\.parts\[0\]\.widthMetres/,
  ],
  [
    'an infinite number',
    JSON.stringify(good).replace('"focalLengthMm":24', '"focalLengthMm":1e999'),
    /camera\.focalLengthMm/,
  ],
  ['far too large', '{'.repeat(12_000_001), /at most 12 MB/],
  [
    'script in a name',
    changed((s) => Object.assign(s, { name: '<img src=x onerror=alert(1)>'.repeat(9) })),
    /name: must be at most 80/,
  ],
];

describe('something goes wrong', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => leave(browser));

  it('wrong files get a message that names the field, and what was open is kept and usable', async () => {
    const app = await AppPage.open(browser);
    await app.lamp().focus();
    await app.page.keyboard.press('Shift+ArrowLeft');
    for (const [name, text, words] of badFiles) {
      await app.openText(`${name}.json`, text);
      await expect.poll(() => app.page.getByRole('alert').innerText(), { message: name }).toMatch(words);
      const message = await app.page.getByRole('alert').innerText();
      expect(message).toContain('Your present setup is unchanged');
      await app.page.getByRole('button', { name: 'Close this message' }).click();
      expect(await app.lamp().getAttribute('aria-label')).toContain('5.0 m');
    }
    await app.page.getByRole('button', { name: 'Undo' }).click();
    expect(await app.lamp().getAttribute('aria-label')).toContain('6.0 m');
    await app.openText('good.json', JSON.stringify({ ...good, name: 'Opened <b>by hand</b>' }));
    await expect.poll(() => app.page.locator('.menu summary').innerText()).toContain('Opened <b>by hand</b>');
    await app.page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => app.page.locator('.menu summary').innerText()).toContain('Three standing stones');
    expect(app.faults).toEqual([]);
    await app.close();
  });

  it('a pass that is called "sky" is mixed as a lamp, not as the sky', async () => {
    const app = await AppPage.open(browser, { samples: 1 });
    const before = await app.settled().then(() => app.picture());
    await app.openText(
      'named.json',
      changed((s) => Object.assign(s.schemes[0].frames[1].passes[0], { id: 'sky' })),
    );
    await app.page.getByRole('status').waitFor();
    // good news goes away by itself
    await app.page.getByRole('status').waitFor({ state: 'detached' });
    await app.settled();
    expect(differingShare(before, await app.picture())).toBe(0);
    await app.close();
  });

  it('works with the network cut after loading, and asks nothing of anyone', async () => {
    const app = await AppPage.open(browser, { samples: 2, isOwn: true });
    await app.settled();
    await app.page.waitForTimeout(4500);
    await app.page.context().setOffline(true);
    await app.page.getByRole('button', { name: 'Any side' }).click();
    await app.page.locator('.walkaround canvas').waitFor();
    await app.page.getByRole('button', { name: 'From above' }).click();
    await app.dragLamp(6, 0.6);
    await expect.poll(() => app.caution('near-axis').count(), { timeout: 20_000 }).toBe(1);
    await app.settled();
    expect(app.faults).toEqual([]);
    await app.close();
  });

  it.each([
    [390, 844],
    [1440, 900],
  ])('fits %i x %i without sideways scrolling; every button is big enough on a phone', async (width, height) => {
    const app = await AppPage.open(browser, { width, height, samples: 1 });
    await app.settled();
    const overflow = await app.page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(overflow).toBeLessThanOrEqual(0);
    if (width < 900) {
      const small = await app.page.evaluate(
        () =>
          [...document.querySelectorAll('button, select, summary')].filter(
            (e) => e.clientHeight > 0 && e.getBoundingClientRect().height < 44,
          ).length,
      );
      expect(small).toBe(0);
    }
    await app.keepScreenshot(`page-${width}x${height}`);
    expect(app.faults).toEqual([]);
    await app.close();
  });
});
