import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { seededRandom } from '../../core/geometry/random.ts';
import { parseSetup } from '../../core/setup/parse-setup.ts';
import { KillableBrowser } from './killable-browser.ts';

/** Pages that are killed side by side, each with a store of its own: hosts that the browser takes for different sites. */
const lanes = ['a', 'b', 'c', 'd', 'e'];
const killsOfPages = 10;
const killsOfAll = 2;

declare global {
  interface Window {
    lampfallDone?: (edit: number, at: number) => Promise<void>;
  }
}

/** Renames the setup about forty times a second through its field, counting on; each is told once the page shows it. */
const editOn = async (from: number): Promise<void> => {
  const input = document.querySelector<HTMLInputElement>('.menu-list .field input');
  const setValue = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set;
  const moment = () => new Promise((resolve) => setTimeout(resolve));
  for (let edit = from; ; edit++) {
    setValue?.call(input, `edit ${edit}`);
    input?.dispatchEvent(new Event('input', { bubbles: true }));
    await moment();
    input?.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true }));
    await moment();
    if (document.querySelector('.menu summary strong')?.textContent !== `edit ${edit}`) throw new Error('no edit');
    void window.lampfallDone?.(edit, Date.now());
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
};

/** One page that is edited, killed and opened again, over and over. */
class Lane {
  private readonly url: string;
  private readonly browser: KillableBrowser;
  private done: { readonly edit: number; readonly at: number }[] = [];
  private page: Page | null = null;
  private last = 0;
  /** Longest time between an edit that was lost and the kill, in seconds. */
  worstSeconds = 0;
  edits = 0;
  faults: string[] = [];

  constructor(browser: KillableBrowser, host: string) {
    this.browser = browser;
    const { port } = new URL(inject('appUrl'));
    this.url = `http://${host}.localhost:${port}/?samples=1`;
  }

  async open(): Promise<void> {
    const page = await this.browser.newPage();
    this.page = page;
    page.on('pageerror', (error) => this.faults.push(error.message));
    await page.exposeFunction('lampfallDone', (edit: number, at: number) => void this.done.push({ edit, at }));
    await page.goto(this.url, { waitUntil: 'commit' });
    await page.waitForSelector('.menu summary strong');
  }

  private get shown(): Promise<string> {
    return (this.page as Page).locator('.menu summary strong').innerText();
  }

  /** Starts to edit, from the number after the last. */
  edit(): void {
    this.done = [];
    void this.page?.evaluate(editOn, this.last + 1).catch(() => undefined);
  }

  /** Sees, on a page opened anew, that nothing older than a second is lost. */
  async look(killedAt: number): Promise<void> {
    const name = await this.shown;
    const found = Number(/^edit (\d+)$/.exec(name)?.[1] ?? 0);
    const secondBefore = this.done.filter(({ at }) => at <= killedAt - 1000).at(-1)?.edit ?? this.last;
    expect(found, `${this.url}: “${name}”`).toBeGreaterThanOrEqual(secondBefore);
    const lost = this.done.find(({ edit, at }) => edit > found && at <= killedAt);
    if (lost) this.worstSeconds = Math.max(this.worstSeconds, (killedAt - lost.at) / 1000);
    this.edits += this.done.length;
    this.last = Math.max(found, this.done.at(-1)?.edit ?? 0);
    expect(await this.page?.locator('.saving-news').count()).toBe(0);
  }

  async killPage(): Promise<number> {
    const { page } = this;
    if (!page) throw new Error('no page');
    const session = await page.context().newCDPSession(page);
    const isDead = new Promise((resolve) => page.once('crash', resolve));
    const killedAt = Date.now();
    session.send('Page.crash').catch(() => undefined);
    await isDead;
    await page.close();
    return killedAt;
  }

  /** All that the browser keeps for the page. */
  kept() {
    return (this.page as Page).evaluate(async () => {
      const database = await new Promise<IDBDatabase>((resolve, reject) => {
        const request = indexedDB.open('lampfall');
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
      const all = (name: string) =>
        new Promise<{ text: string; name: string }[]>((resolve) => {
          const request = database.transaction(name).objectStore(name).getAll();
          request.onsuccess = () => resolve(request.result);
        });
      return { setups: await all('setups'), summaries: await all('summaries') };
    });
  }
}

describe('a page that is killed', () => {
  const browser = new KillableBrowser();
  const random = seededRandom(23);
  /** How long a page is edited before it is killed. */
  const aWhile = () => new Promise((resolve) => setTimeout(resolve, 300 + 1200 * random()));
  beforeAll(() => browser.start());
  afterAll(() => browser.end());

  it('has lost nothing older than a second, 50 times of 50, nor when the whole browser is killed; and the store is whole', async () => {
    const all = lanes.map((host) => new Lane(browser, host));
    let kills = 0;
    await Promise.all(
      all.map(async (lane) => {
        await lane.open();
        for (let i = 0; i < killsOfPages; i++) {
          lane.edit();
          await aWhile();
          const killedAt = await lane.killPage();
          kills++;
          await lane.open();
          await lane.look(killedAt);
        }
      }),
    );
    expect(kills).toBe(50);
    for (let i = 0; i < killsOfAll; i++) {
      for (const lane of all) lane.edit();
      await aWhile();
      const killedAt = Date.now();
      await browser.kill();
      await browser.start();
      await Promise.all(all.map((lane) => lane.open()));
      for (const lane of all) await lane.look(killedAt);
    }
    for (const lane of all) {
      const { setups, summaries } = await lane.kept();
      expect(setups).toHaveLength(1);
      expect(summaries).toHaveLength(1);
      expect(parseSetup(setups[0]?.text ?? '').name).toBe(summaries[0]?.name);
      expect(lane.edits).toBeGreaterThan(100);
      expect(lane.faults).toEqual([]);
    }
    console.info(`most that was lost: ${Math.max(...all.map(({ worstSeconds }) => worstSeconds)).toFixed(2)} s`);
  });
});
