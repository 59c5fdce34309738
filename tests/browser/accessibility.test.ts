import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppPage } from './app-page.ts';
import { launch } from './browser.ts';

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

const press = (app: AppPage, name: string) => app.page.getByRole('button', { name, exact: true }).first().click();

/** What is on screen, and how to get there from the opened page. */
const screens: readonly (readonly [name: string, go: (app: AppPage) => Promise<void>])[] = [
  ['picture', async () => undefined],
  ['levels', (app) => app.page.getByLabel('Levels').check()],
  ['compare', (app) => press(app, 'Compare')],
  [
    'wipe',
    async (app) => {
      await press(app, 'Compare');
      await press(app, 'Wipe');
    },
  ],
  [
    'sweep',
    async (app) => {
      await press(app, 'Sweep');
      await press(app, 'Start');
    },
  ],
  [
    'lesson',
    async (app) => {
      await app.page.locator('.menu summary').click();
      await app.page.getByRole('button', { name: /Flat to relief/ }).click();
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
  afterAll(() => browser.close());

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
      await app.page.close();
    },
  );
});
