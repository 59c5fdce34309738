import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { launch } from './browser.ts';

/** The page in one of several tabs that share what is kept. */
class OwnTab {
  readonly page: Page;
  readonly faults: string[];

  private constructor(page: Page, faults: string[]) {
    this.page = page;
    this.faults = faults;
  }

  static async open(context: BrowserContext): Promise<OwnTab> {
    const page = await context.newPage();
    const faults: string[] = [];
    page.on('pageerror', ({ message }) => faults.push(message));
    page.on('console', (message) => message.type() === 'error' && faults.push(message.text()));
    await page.goto(`${inject('appUrl')}?samples=1`);
    await page.waitForSelector('.mark');
    return new OwnTab(page, faults);
  }

  get name() {
    return this.page.locator('.menu summary strong').innerText();
  }

  /** An edit, by keyboard: the setup is called so, and kept. */
  async call(name: string): Promise<void> {
    await this.menu();
    await this.page.getByLabel('Name of this setup').fill(name);
    await this.page.keyboard.press('Enter');
    await this.page.keyboard.press('Escape');
  }

  async menu(): Promise<void> {
    if ((await this.page.locator('.menu[open]').count()) === 0) await this.page.locator('.menu summary').click();
  }

  /** Names of the setups that are listed as the user's own. */
  async own(): Promise<string[]> {
    await this.menu();
    return this.page.locator('.own-name').allInnerTexts();
  }

  async does(name: string, tool: 'Duplicate' | 'Delete'): Promise<void> {
    await this.menu();
    const row = this.page.locator(`.own-row[data-own="${name}"]`);
    if ((await row.locator('.own-tools').count()) === 0) await row.locator('.own-more').click();
    await row.getByRole('button', { name: `${tool} ${name}` }).click();
  }

  notice(action: string) {
    return this.page.locator('.saving-news').getByRole('button', { name: action, exact: true });
  }
}

describe('saved work', () => {
  let context: BrowserContext;
  beforeAll(async () => {
    const browser = await launch();
    context = await browser.newContext({
      viewport: { width: 900, height: 600 },
      deviceScaleFactor: 0.5,
      serviceWorkers: 'block',
    });
    // nothing of this is about the picture
    await context.addInitScript(() => {
      const original = HTMLCanvasElement.prototype.getContext;
      HTMLCanvasElement.prototype.getContext = function (this: HTMLCanvasElement, kind: string, ...rest: unknown[]) {
        return kind === 'webgl2' ? null : original.apply(this, [kind, ...rest] as never);
      } as typeof original;
    });
  });
  afterAll(() => context.close());

  it('an edit is there after a reload; setups are renamed, duplicated, deleted and brought back; two tabs never overwrite each other', async () => {
    const tab = await OwnTab.open(context);
    expect(await tab.own()).toEqual([]);
    await tab.call('The gate');
    await expect.poll(() => tab.own()).toEqual(['The gate']);
    await tab.page.reload();
    await tab.page.waitForSelector('.mark');
    expect(await tab.name).toBe('The gate');
    expect(await tab.page.getByRole('button', { name: 'Undo', exact: true }).isDisabled()).toBe(true);

    await tab.does('The gate', 'Duplicate');
    await expect.poll(() => tab.own()).toEqual(['The gate 2', 'The gate']);
    const row = tab.page.locator('.own-row[data-own="The gate 2"]');
    await row.locator('.own-more').click();
    await row.getByLabel('Name of The gate 2').fill('The barn');
    await tab.page.keyboard.press('Enter');
    await expect.poll(() => tab.own()).toEqual(['The barn', 'The gate']);

    // the one on screen is deleted: the next comes in its place; undo brings it back to the screen
    await tab.does('The gate', 'Delete');
    await expect.poll(() => tab.name).toBe('The barn');
    expect(await tab.own()).toEqual(['The barn']);
    await tab.notice('Undo').click();
    await expect.poll(() => tab.name).toBe('The gate');
    await expect.poll(() => tab.own()).toHaveLength(2);

    const other = await OwnTab.open(context);
    expect(await other.name).toBe('The gate');
    await tab.call('The gate by day');
    await other.notice('Take it up').click();
    await expect.poll(() => other.name).toBe('The gate by day');
    // it is changed in both: what was offered is not taken up
    await tab.call('The gate at dawn');
    await other.notice('Take it up').waitFor();
    await other.call('The gate by night');
    await expect.poll(() => other.name).toBe('The gate by night, second copy');
    expect(await other.page.locator('.saving-news').innerText()).toContain('both are kept');
    const all = ['The gate by night, second copy', 'The gate at dawn', 'The barn'];
    await expect.poll(() => other.own()).toEqual(all);
    await expect.poll(() => tab.own()).toEqual(all);
    expect(await tab.name).toBe('The gate at dawn');
    expect([...tab.faults, ...other.faults]).toEqual([]);
  });
});
