import type { Browser, Page } from 'playwright-core';
import { build, type PreviewServer, preview } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { pagePolicy, servedPolicy } from '../../app/build/page-policy.ts';
import { samplePlugin } from '../../app/build/sample-plugin.ts';
import { forgedLink, type Hostile, hostileOnes } from '../core/share/hostile.ts';
import { AppPage } from './app-page.ts';
import { launch, leave } from './browser.ts';

const outDir = '.reports/share-page';
// an icon of its own, or the browser asks for one whenever the address changes
const head = `<meta http-equiv="Content-Security-Policy" content="${pagePolicy}"><link rel="icon" href="data:,">`;

/** Listens to everything that a hostile text could bring about. */
const trap = (page: Page): string[] => {
  const caught: string[] = [];
  page.on('dialog', (dialog) => {
    caught.push(`dialog: ${dialog.message()}`);
    void dialog.dismiss();
  });
  page.on('pageerror', ({ message }) => caught.push(`error: ${message}`));
  page.on('console', (message) => {
    if (message.type() === 'error') caught.push(`console: ${message.text()}`);
  });
  page.on('popup', (popup) => caught.push(`popup: ${popup.url()}`));
  return caught;
};

describe('hostile links and files, in a real browser', () => {
  const ones = hostileOnes(20261129);
  let browser: Browser;
  let server: PreviewServer;
  beforeAll(async () => {
    await build({
      configFile: false,
      logLevel: 'error',
      root: 'tests/browser/share-page',
      base: './',
      plugins: [
        samplePlugin(),
        { name: 'policy', transformIndexHtml: (html) => html.replace('<head>', `<head>${head}`) },
      ],
      build: { outDir: `../../../${outDir}`, emptyOutDir: true, target: 'es2023', chunkSizeWarningLimit: 2000 },
    });
    server = await preview({
      configFile: false,
      logLevel: 'error',
      build: { outDir },
      preview: { host: '127.0.0.1', port: 4406, headers: { 'Content-Security-Policy': servedPolicy } },
    });
    browser = await launch();
  });
  afterAll(async () => {
    await leave(browser);
    await server.close();
  });

  it('all 2,000: a message or a setup; no script runs, nothing is asked of anyone, the page stays where it is', async () => {
    const page = await browser.newPage({ serviceWorkers: 'block' });
    const caught = trap(page);
    const address = server.resolvedUrls?.local[0] as string;
    await page.goto(address);
    await page.waitForFunction(() => typeof window.openOne === 'function');
    const asked: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    page.on('framenavigated', (frame) => {
      if (frame.url().split('#')[0] !== address) caught.push(`navigation: ${frame.url()}`);
    });
    const counts: Record<string, number> = {};
    for (let at = 0; at < ones.length; at += 100) {
      const batch = ones.slice(at, at + 100);
      const outcomes = await page.evaluate(async (list) => {
        const all = [];
        for (const { way, text } of list) all.push(await window.openOne(way, text));
        return all;
      }, batch as Hostile[]);
      outcomes.forEach(({ tone, text, isSame, hash }, i) => {
        const what = `${at + i}, ${batch[i]?.sort}: ${text}`;
        counts[tone] = (counts[tone] ?? 0) + 1;
        expect(hash, what).toBe('');
        if (tone === 'problem') {
          expect(text, what).toMatch(/was not opened\. \P{Cc}+\. Your present setup is unchanged\.$/u);
          expect(isSame, what).toBe(true);
        } else expect(tone, what).toBe('done');
      });
    }
    expect(counts['problem']).toBeGreaterThan(1000);
    expect(counts['done']).toBeGreaterThan(100);
    expect(await page.evaluate(() => window.hit)).toBeUndefined();
    expect([caught, asked]).toEqual([[], []]);
    await page.close();
  });

  it('six that open, on the page itself: shown as the letters that they are', async () => {
    const app = await AppPage.open(browser, { samples: 1, width: 920, height: 500, isOwn: true });
    const caught = trap(app.page);
    // made of the smallest sample, which is soon drawn
    const isSmall = ({ sort, text }: Hostile) =>
      sort === 'markup or script in a text' && text.startsWith('{') && text.length < 7000;
    const marked = ones.filter(isSmall).slice(0, 6);
    expect(marked).toHaveLength(6);
    const before = await app.page.evaluate(
      () => document.querySelectorAll('script, iframe, img, object, embed').length,
    );
    for (const { text } of marked) {
      await app.page.evaluate((link) => {
        location.hash = link;
      }, forgedLink(text));
      await app.page.waitForFunction(() => location.hash === '' && document.querySelector('.notice'));
      await app.page.evaluate(() => document.querySelector<HTMLElement>('.notice button')?.click());
    }
    const after = await app.page.evaluate(() => document.querySelectorAll('script, iframe, img, object, embed').length);
    expect(after).toBe(before);
    expect(await app.page.evaluate(() => window.hit)).toBeUndefined();
    expect([caught, app.faults]).toEqual([[], []]);
    await app.close();
  });
});

describe('a link of one’s own', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => leave(browser));

  it('is made in the menu, opens the same setup elsewhere, and is gone from the address then', async () => {
    const app = await AppPage.open(browser, { samples: 1, width: 390, height: 844 });
    await app.page.locator('.menu > summary').click();
    await app.page.getByLabel('Name of this setup').fill('Our <b>stones</b>');
    await app.page.keyboard.press('Enter');
    await app.page.getByRole('button', { name: 'Share by link…' }).click();
    const dialog = app.page.getByRole('dialog', { name: 'Share by link' });
    const link = await dialog.getByLabel('Link').inputValue();
    expect(link).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/#setup=a[A-Za-z0-9_-]{200,5000}$/);
    await dialog.getByLabel('Leave out where it is').uncheck();
    await expect.poll(() => dialog.getByLabel('Link').inputValue()).not.toBe(link);
    await app.keepScreenshot('share-390x844');
    await dialog.getByRole('button', { name: 'Close' }).click();

    await app.page.locator('.menu > summary').click();
    await app.page.locator('[data-sample="lone-tree"]').click();
    const name = app.page.locator('.menu > summary');
    await expect.poll(() => name.innerText()).toContain('Lone');
    await app.page.evaluate((hash) => {
      location.hash = hash;
    }, new URL(link).hash);
    await expect.poll(() => name.innerText()).toContain('Our <b>stones</b>');
    expect(await app.page.getByRole('status').innerText()).toContain('from a link');
    expect(app.page.url()).not.toContain('#setup');

    await app.page.evaluate(() => {
      location.hash = 'setup=aBROKEN';
    });
    await expect.poll(() => app.page.getByRole('alert').innerText()).toContain('Your present setup is unchanged');
    expect(await name.innerText()).toContain('Our <b>stones</b>');
    expect(app.faults).toEqual([]);
    await app.close();
  });
});
