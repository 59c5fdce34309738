import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { seededRandom } from '../../core/geometry/random.ts';
import { parseSetup } from '../../core/setup/parse-setup.ts';
import type { Keeping } from './keeping-page/main.ts';
import { KillableBrowser } from './killable-browser.ts';
import { serveTestPage } from './serve-test-page.ts';

declare global {
  interface Window {
    keeping?: Keeping;
  }
}

/**
 * Edits the setup some thirty times a second, counting on, and tells each time when it was done: on the real page it is
 * renamed through the field in its menu; on the bare one renamed, its lamp moved, and dimmed, by the page's store.
 */
const editOn = async (from: number): Promise<void> => {
  const input = document.querySelector<HTMLInputElement>('.menu-list .field input');
  const setValue = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set;
  const wait = (milliseconds: number) => new Promise((resolve) => setTimeout(resolve, milliseconds));
  const type = async (name: string) => {
    setValue?.call(input, name);
    input?.dispatchEvent(new Event('input', { bubbles: true }));
    await wait(0);
    input?.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true }));
    await wait(0);
  };
  const shows = (name: string) =>
    (window.keeping?.shown() ?? document.querySelector('.menu summary strong')?.textContent) === name;
  for (let edit = from; ; edit++) {
    window.keeping?.edit(edit);
    while (!shows(`edit ${edit}`)) await type(`edit ${edit}`);
    console.info(`done ${edit} ${Date.now()}`);
    await wait(30);
  }
};

/** What is on screen, once the page is there. */
const shown = (): string | null =>
  window.keeping?.shown() ?? document.querySelector('.menu summary strong')?.textContent ?? null;

/** All that the browser keeps for the page. */
const kept = async () => {
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
};

/** An edit takes about so long, with the pause after it, where nothing holds it up. */
const beatMilliseconds = 100;

/** One page that is edited, killed and opened again, over and over. */
class Lane {
  readonly url: string;
  private readonly browser: KillableBrowser;
  private done: { readonly edit: number; readonly at: number }[] = [];
  private page: Page | null = null;
  private last = 0;
  /** Longest time between an edit that was lost and the kill, in seconds. */
  worstSeconds = 0;
  edits = 0;
  faults: string[] = [];

  /** `host` makes it a site of its own, with a process and a store of its own. */
  constructor(browser: KillableBrowser, host: string, url: string) {
    this.browser = browser;
    this.url = url.replace('127.0.0.1', `${host}.localhost`).replace('//localhost', `//${host}.localhost`);
  }

  private run<T, A>(work: (argument: A) => T | Promise<T>, argument?: A): Promise<T> {
    if (!this.page) throw new Error('no page');
    return this.page.evaluate(work as never, argument as never);
  }

  async open(): Promise<void> {
    const page = await this.browser.newPage();
    this.page = page;
    page.on('pageerror', ({ message }) => this.faults.push(message));
    page.on('console', (message) => {
      const [, edit, at] = /^done (\d+) (\d+)$/.exec(message.text()) ?? [];
      if (edit && at) this.done.push({ edit: Number(edit), at: Number(at) });
    });
    await page.goto(this.url, { waitUntil: 'commit' });
    await expect.poll(() => this.run(shown).catch(() => null), { timeout: 60_000 }).not.toBeNull();
  }

  openLarge(): Promise<void> {
    return this.run(() => window.keeping?.openLarge());
  }

  /** Starts to edit, from the number after the last; the answer comes with the first. */
  async edit(): Promise<void> {
    this.done = [];
    let end = '';
    this.run(editOn, this.last + 1).catch(({ message }: Error) => {
      end = message;
    });
    // a busy machine takes its time over the first
    const first = () => (end || this.done.length > 0 ? end : 'none');
    await expect.poll(first, { message: this.url, interval: 20, timeout: 60_000 }).toBe('');
  }

  /** How long the page stood still before it was killed, in milliseconds: on a starved machine its saving stood still too. */
  private stoodStill(killedAt: number): number {
    const times = [...this.done.map(({ at }) => at).filter((at) => at > killedAt - 3000), killedAt];
    return Math.max(0, ...times.slice(1).map((at, i) => at - (times[i] as number) - beatMilliseconds));
  }

  /** Sees, on a page opened anew, that nothing older than a second is lost, and as long as it stood still. */
  async look(killedAt: number): Promise<void> {
    const early = killedAt - 1000 - this.stoodStill(killedAt);
    const secondBefore = this.done.filter(({ at }) => at <= early).at(-1)?.edit ?? 0;
    const found = async () => Number(/^edit (\d+)$/.exec((await this.run(shown)) ?? '')?.[1] ?? 0);
    // on a busy machine the store may answer late
    await expect.poll(found, { message: this.url }).toBeGreaterThanOrEqual(Math.max(secondBefore, this.last));
    this.last = await found();
    const lost = this.done.find(({ edit, at }) => edit > this.last && at <= killedAt);
    if (lost) this.worstSeconds = Math.max(this.worstSeconds, (killedAt - lost.at) / 1000);
    this.edits += this.done.length;
    expect(await this.run(() => window.keeping?.news() ?? document.querySelectorAll('.saving-news').length)).toBe(0);
  }

  /** Kills the process of the page. */
  async kill(): Promise<number> {
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

  async expectWhole(): Promise<void> {
    const { setups, summaries } = await this.run(kept);
    expect(setups).toHaveLength(1);
    expect(summaries).toHaveLength(1);
    expect(parseSetup(setups[0]?.text ?? '').name).toBe(summaries[0]?.name);
    expect(this.faults).toEqual([]);
  }
}

describe('a page that is killed', () => {
  const browser = new KillableBrowser();
  let bare: Awaited<ReturnType<typeof serveTestPage>>;
  const random = seededRandom(23);
  const aWhile = () => new Promise((resolve) => setTimeout(resolve, 200 + 1100 * random()));
  beforeAll(async () => {
    bare = await serveTestPage('keeping-page');
    await browser.start();
  });
  afterAll(async () => {
    await browser.end();
    await bare.close();
  });

  it('has lost nothing older than a second, 50 times of 50, nor when the whole browser is killed; and the store is whole', async () => {
    const ofBare = ['a', 'b', 'c'].map((host) => new Lane(browser, host, bare.url));
    // it takes long to load; the bare page has the same store and keeps it the same way
    const ofPage = new Lane(browser, 'page', `${inject('appUrl')}?samples=1`);
    let kills = 0;
    const killOften = async (lane: Lane, times: number) => {
      for (let k = 0; k < times; k++) {
        await lane.edit();
        await aWhile();
        const killedAt = await lane.kill();
        kills++;
        await lane.open();
        await lane.look(killedAt);
      }
    };
    await Promise.all(
      ofBare.map(async (lane, i) => {
        await lane.open();
        if (i === 0) await lane.openLarge();
        await killOften(lane, i === 0 ? 16 : 15);
      }),
    );
    await ofPage.open();
    await killOften(ofPage, 4);
    expect(kills).toBe(50);
    const lanes = [...ofBare, ofPage];
    await Promise.all(lanes.map((lane) => lane.edit()));
    await aWhile();
    const killedAt = Date.now();
    await browser.kill();
    await browser.start();
    for (const lane of lanes) {
      await lane.open();
      await lane.look(killedAt);
      await lane.expectWhole();
    }
    const told = lanes.map(({ worstSeconds, edits }) => `${worstSeconds.toFixed(2)} s of ${edits} edits`);
    console.info(`most that was lost, by page: ${told.join(', ')}`);
  });
});
