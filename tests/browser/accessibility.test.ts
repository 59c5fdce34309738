import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppPage } from './app-page.ts';
import { launch, leave } from './browser.ts';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** Rules that the page breaks in earnest: each with the first element that does. */
const seriousFaults = async ({ page }: AppPage): Promise<string[]> => {
  await page.evaluate(axeSource);
  const { violations } = await page.evaluate(() =>
    (window as unknown as { axe: { run: () => Promise<AxeResults> } }).axe.run(),
  );
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .map(({ id, nodes }) => `${id}: ${nodes[0]?.html} (${nodes.length})`);
};

const press = (app: AppPage, name: string | RegExp) =>
  app.page
    .getByRole('button', { name, ...(typeof name === 'string' ? { exact: true } : {}) })
    .first()
    .click();

const openLesson = async (app: AppPage, name: RegExp) => {
  await app.page.locator('.menu summary').click();
  await press(app, name);
};

/** On a phone the marks stand in a room of their own. */
const mark = async (app: AppPage, name: string) => {
  if ((app.page.viewportSize()?.width ?? 0) < 900) await press(app, 'Exposure');
  await app.page.getByLabel(name, { exact: true }).check();
};

/** What is on screen, and how to get there from the opened page. */
const screens: readonly (readonly [name: string, go: (app: AppPage) => Promise<void>])[] = [
  ['picture', async () => undefined],
  [
    'marks',
    async (app) => {
      await mark(app, 'Shadows');
      await mark(app, 'Lit outline');
      await press(app, 'Patch');
      await app.page.locator('#patch').waitFor();
      await app.page.locator('.picture-marks pattern').first().waitFor({ state: 'attached' });
    },
  ],
  [
    'subjects',
    async (app) => {
      await app.page.locator('.menu summary').click();
      await press(app, /^New setup/);
      if ((app.page.viewportSize()?.width ?? 0) < 900) await press(app, 'Subjects');
      for (const name of ['Outline drawn up', /^Hut/]) {
        await app.page.locator('.add-subject summary').click();
        await app.page.getByRole('group', { name: 'Add a subject' }).getByRole('button', { name }).click();
      }
      await app.page.locator('.subjects .slip-open summary', { hasText: 'parts' }).click();
      await app.page.locator('.parts .slip-head').first().click();
      await app.page.locator('.parts summary', { hasText: 'More' }).click();
    },
  ],
  ['levels', (app) => mark(app, 'Levels')],
  [
    'time line and blend',
    async (app) => {
      const isPhone = (app.page.viewportSize()?.width ?? 0) < 900;
      if (isPhone) await press(app, 'Exposure');
      await app.page.locator('.blend > .unfold').click();
      await app.page.getByLabel('Counts', { exact: true }).first().selectOption('ground');
      if (isPhone) await press(app, 'Time');
      else await app.page.locator('.time-toggle').click();
      await app.page.locator('.frames-drop summary').click();
    },
  ],
  [
    'place and hour',
    async (app) => {
      if ((app.page.viewportSize()?.width ?? 0) < 900) await press(app, 'Time');
      await app.page.locator('.hour-strip > .unfold').click();
      await press(app, 'Find nights');
      await press(app, 'Place');
      await press(app, 'Add a town');
      await app.page.locator('.town-from summary').click();
      await app.page.locator('.north-fields p').waitFor();
    },
  ],
  ['compare', (app) => press(app, 'Compare')],
  [
    'wipe',
    async (app) => {
      await press(app, 'Compare');
      await press(app, 'Wipe');
    },
  ],
  [
    'difference',
    async (app) => {
      await press(app, 'Compare');
      await press(app, 'Difference');
    },
  ],
  [
    'sweep',
    async (app) => {
      await press(app, 'Sweep');
      await press(app, 'Start');
      // the sheet can be saved once all of it is there
      await app.page.locator('.sheet-menu').waitFor({ timeout: 120_000 });
      await app.page.locator('.cell').nth(3).click();
    },
  ],
  ['lesson', (app) => openLesson(app, /Flat to relief/)],
  [
    'question',
    async (app) => {
      await openLesson(app, /Flat to relief/);
      for (let step = 0; step < 5 && (await app.page.getByRole('button', { name: 'Reveal' }).count()) === 0; step++)
        await press(app, 'Next');
      await app.page.getByRole('button', { name: 'Reveal' }).waitFor();
    },
  ],
  [
    'walkaround',
    async (app) => {
      await press(app, 'Any side');
      await app.page.locator('.walkaround canvas').waitFor();
    },
  ],
];

const sizes = [
  [1440, 900],
  [1024, 768],
  [390, 844],
] as const;

describe('screens by axe-core: no serious fault, no sideways scrolling', () => {
  let browser: Browser;
  beforeAll(async () => {
    // its script is run by the test, not by the page, whose security policy stays as it is
    browser = await launch();
  });
  afterAll(() => leave(browser));

  it.each(screens.flatMap(([name, go]) => sizes.map(([width, height]) => [name, width, height, go] as const)))(
    '%s at %i x %i',
    async (name, width, height, go) => {
      const app = await AppPage.open(browser, { width, height, samples: 1 });
      await go(app);
      await app.settled();
      await app.keepScreenshot(`${name}-${width}x${height}`);
      expect(await seriousFaults(app)).toEqual([]);
      const overflow = await app.page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      expect(overflow).toBeLessThanOrEqual(0);
      expect(app.faults).toEqual([]);
      await app.close();
    },
  );
});
