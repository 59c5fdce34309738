import { once } from 'node:events';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { build, type PreviewServer, preview } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { offlinePlugin } from '../../app/build/offline-plugin.ts';
import { launch } from './browser.ts';

const outDir = '.reports/offline-page';

/** A page of one script and one late part, built over the one before: the server has nothing of older builds. */
const buildPage = (name: string) =>
  build({
    configFile: false,
    logLevel: 'error',
    root: 'tests/browser/offline-page',
    base: './',
    define: { buildName: JSON.stringify(name) },
    plugins: [offlinePlugin()],
    build: { outDir: `../../../${outDir}`, emptyOutDir: true, target: 'es2023' },
  });

const lateFile = () => `${outDir}/assets/${readdirSync(`${outDir}/assets`).find((name) => name.startsWith('late-'))}`;

const buildOf = (page: Page) => page.evaluate(() => window.offlinePage.build);
const lateOf = (page: Page) => page.evaluate(() => window.offlinePage.late());
const stateOf = (page: Page) => page.evaluate(() => window.offlinePage.state());
/** Has the browser ask for a newer worker; what has become of that one once it is settled, or null where there was none. */
const lookForNewer = (page: Page) =>
  page.evaluate(async () => {
    const { installing } = await (await navigator.serviceWorker.ready).update();
    while (installing?.state === 'installing')
      await new Promise((resolve) => installing.addEventListener('statechange', resolve, { once: true }));
    return installing?.state ?? null;
  });
const cachesOf = (page: Page) => page.evaluate(async () => (await caches.keys()).length);

describe('newer builds of the page', () => {
  let browser: Browser;
  let context: BrowserContext;
  let server: PreviewServer;
  let address = '';
  const openPage = async () => {
    const page = await context.newPage();
    await page.goto(address);
    await page.waitForFunction(() => window.offlinePage?.state().isReady);
    return page;
  };
  beforeAll(async () => {
    browser = await launch();
    await buildPage('first');
    server = await preview({
      configFile: false,
      logLevel: 'error',
      build: { outDir },
      preview: { host: '127.0.0.1', port: 4405 },
    });
    address = server.resolvedUrls?.local[0] as string;
    context = await browser.newContext();
  });
  afterAll(async () => {
    await context.close();
    await server.close();
  });

  it('never mix: an open page keeps the files of its own build, another takes up the newer one when told to', async () => {
    const [old, other] = [await openPage(), await openPage()];
    await buildPage('second');
    expect(await lookForNewer(other)).toBe('installed');
    await expect.poll(() => stateOf(other)).toEqual({ isReady: true, hasNewer: true });
    // loaded again without being told to: still the first build, whole
    await other.reload();
    await other.waitForFunction(() => window.offlinePage.state().hasNewer);
    expect(await buildOf(other)).toBe('first');

    await other.evaluate(() => window.offlinePage.takeUpNewer());
    await other.waitForFunction(() => window.offlinePage?.build === 'second');
    expect(await lateOf(other)).toBe('late part of second');
    // the server has it no more, and the newer worker answers
    expect(await buildOf(old)).toBe('first');
    expect(await lateOf(old)).toBe('late part of first');
    expect(await cachesOf(other)).toBe(2);

    await old.close();
    const cachesAfterReload = async () => {
      await other.reload();
      return cachesOf(other);
    };
    await expect.poll(cachesAfterReload).toBe(1);
    await other.close();
  });

  it('are left alone when they do not come whole', async () => {
    const page = await openPage();
    await buildPage('third');
    // a file that is not what its build says, as when a server is being written to
    writeFileSync(lateFile(), 'export const lateWord = 0;');
    expect(await lookForNewer(page)).toBe('redundant');
    expect(await stateOf(page)).toEqual({ isReady: true, hasNewer: false });
    await page.reload();
    expect(await buildOf(page)).toBe('second');
    expect(await lateOf(page)).toBe('late part of second');
    expect(await cachesOf(page)).toBe(1);
    await page.close();
  });

  it('are kept again where the browser threw them away, and not called ready before', async () => {
    await buildPage('fourth');
    const page = await openPage();
    await lookForNewer(page);
    // the page hears of it a little after the worker is settled
    await expect.poll(() => stateOf(page)).toEqual({ isReady: true, hasNewer: true });
    await page.evaluate(() => window.offlinePage.takeUpNewer());
    await page.waitForFunction(() => window.offlinePage?.build === 'fourth' && window.offlinePage.state().isReady);
    await page.evaluate(async () => {
      for (const name of await caches.keys()) await caches.delete(name);
    });
    const text = readFileSync(lateFile());
    writeFileSync(lateFile(), 'not what it was');
    await page.reload();
    await page.evaluate(() => window.offlinePage.followed);
    expect((await stateOf(page)).isReady).toBe(false);
    writeFileSync(lateFile(), text);
    await page.reload();
    await page.waitForFunction(() => window.offlinePage?.state().isReady);
    await context.setOffline(true);
    expect(await lateOf(page)).toBe('late part of fourth');
    await context.setOffline(false);
    await page.close();
  });

  it('ask nobody else: the worker refuses what is not of its own server, even for a page without a policy', async () => {
    const asked: string[] = [];
    const other = createServer(({ url }, response) => {
      asked.push(url ?? '');
      response.setHeader('access-control-allow-origin', '*').end('x');
    }).listen(0, '127.0.0.1');
    await once(other, 'listening');
    const there = `http://127.0.0.1:${(other.address() as AddressInfo).port}`;
    writeFileSync(`${outDir}/plain.html`, '<!doctype html><title>Plain</title>');
    await (await openPage()).close();
    const page = await context.newPage();
    await page.goto(`${address}plain.html`);
    const ask = (path: string) => page.evaluate((url) => fetch(url).then((r) => r.text(), String), there + path);
    expect(await ask('/under-the-worker')).toMatch(/TypeError/);
    await page.evaluate(async () => (await navigator.serviceWorker.ready).unregister());
    await page.reload();
    // the check can fail: without the worker it is asked
    expect(await ask('/without-it')).toBe('x');
    expect(asked).toEqual(['/without-it']);
    await page.close();
    other.close();
  });
});
