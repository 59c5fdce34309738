import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppPage } from './app-page.ts';
import { axeFaults } from './axe.ts';
import { launch, leave } from './browser.ts';

/** Rules that the page breaks in earnest. */
const seriousFaults = async ({ page }: AppPage): Promise<string[]> =>
  (await axeFaults(page))
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .map(({ words }) => words);

const isPhone = (app: AppPage): boolean => (app.page.viewportSize()?.width ?? 0) < 900;

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
  if (isPhone(app)) await press(app, 'Exposure');
  await app.page.getByLabel(name, { exact: true }).check();
};

const openLamp = async (app: AppPage) => {
  if (isPhone(app)) await press(app, 'Lamps');
  await app.page.locator('.lamp-part > summary').first().click();
};

const sizes = {
  wide: [1440, 900],
  between: [1024, 768],
  phone: [390, 844],
  sideways: [844, 390],
} as const;
type SizeName = keyof typeof sizes;
const all: readonly SizeName[] = ['wide', 'between', 'phone', 'sideways'];
const ends: readonly SizeName[] = ['wide', 'phone'];

/** What is on screen, at which sizes, and how to get there from the opened page. */
const screens: readonly (readonly [name: string, at: readonly SizeName[], go: (app: AppPage) => Promise<void>])[] = [
  ['picture', all, async () => undefined],
  [
    'marks',
    [...ends, 'sideways'],
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
    ends,
    async (app) => {
      await app.page.locator('.menu summary').click();
      await press(app, /^New setup/);
      if (isPhone(app)) await press(app, 'Subjects');
      for (const name of ['Outline drawn up', /^Hut/]) {
        await app.page.locator('.add-subject summary').click();
        await app.page.getByRole('group', { name: 'Add a subject' }).getByRole('button', { name }).click();
      }
      await app.page.locator('.subjects .slip-open summary', { hasText: 'parts' }).click();
      await app.page.locator('.parts .slip-head').first().click();
      await app.page.locator('.parts summary', { hasText: 'More' }).click();
    },
  ],
  ['levels', ['wide'], (app) => mark(app, 'Levels')],
  [
    'time line and blend',
    ends,
    async (app) => {
      if (isPhone(app)) await press(app, 'Exposure');
      await app.page.locator('.blend > .unfold').click();
      await app.page.getByLabel('Counts', { exact: true }).first().selectOption('ground');
      if (isPhone(app)) await press(app, 'Time');
      else await app.page.locator('.time-toggle').click();
      await app.page.locator('.frames-drop summary').click();
    },
  ],
  [
    'place and hour',
    ends,
    async (app) => {
      if (isPhone(app)) await press(app, 'Time');
      await app.page.locator('.hour-strip > .unfold').click();
      await press(app, 'Find nights');
      await press(app, 'Place');
      await press(app, 'Add a town');
      await app.page.locator('.town-from summary').click();
      await app.page.locator('.north-fields p').waitFor();
    },
  ],
  ['compare', [...ends, 'sideways'], (app) => press(app, 'Compare')],
  [
    'wipe',
    ends,
    async (app) => {
      await press(app, 'Compare');
      await press(app, 'Wipe');
    },
  ],
  [
    'difference',
    ['wide'],
    async (app) => {
      await press(app, 'Compare');
      await press(app, 'Difference');
    },
  ],
  [
    'sweep',
    ends,
    async (app) => {
      await press(app, 'Sweep');
      await press(app, 'Start');
      // the sheet can be saved once all of it is there
      await app.page.locator('.sheet-menu').waitFor({ timeout: 120_000 });
      await app.page.locator('.cell').nth(3).click();
    },
  ],
  ['lesson', ends, (app) => openLesson(app, /Flat to relief/)],
  [
    'question',
    ends,
    async (app) => {
      await openLesson(app, /Flat to relief/);
      for (let step = 0; step < 5 && (await app.page.getByRole('button', { name: 'Reveal' }).count()) === 0; step++)
        await press(app, 'Next');
      await app.page.getByRole('button', { name: 'Reveal' }).waitFor();
    },
  ],
  [
    'walkaround',
    ends,
    async (app) => {
      await press(app, 'Any side');
      await app.page.locator('.walkaround canvas').waitFor();
    },
  ],
  [
    'own setups',
    ends,
    async (app) => {
      await press(app, 'Duplicate');
      await app.page.locator('.menu > summary').click();
      await app.page.getByRole('listitem').filter({ hasText: 'Three standing stones' }).first().waitFor();
    },
  ],
  [
    'card',
    ends,
    async (app) => {
      await press(app, 'Card');
      await app.page.locator('.card-paper image').first().waitFor({ state: 'attached' });
    },
  ],
  [
    'test shot',
    ends,
    async (app) => {
      await openLamp(app);
      await press(app, 'Test shot…');
      await app.page.getByRole('dialog').waitFor();
    },
  ],
  [
    'bag',
    ends,
    async (app) => {
      await openLamp(app);
      await press(app, 'Keep in my bag');
      await app.page.locator('summary', { hasText: 'from my bag' }).click();
      await press(app, 'Open my bag…');
      await app.page.locator('.bag-row').waitFor();
    },
  ],
];

describe('screens by axe-core: no serious fault, no sideways scrolling', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => leave(browser));

  it.each(screens.flatMap(([name, at, go]) => at.map((size) => [name, ...sizes[size], go] as const)))(
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
