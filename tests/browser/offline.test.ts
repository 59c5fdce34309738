import type { Browser, BrowserContext } from 'playwright-core';
import { type PreviewServer, preview } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { servedPolicy } from '../../app/build/page-policy.ts';
import { findPoppler, poppler } from '../app/card/find-poppler.ts';
import { launch, leave } from './browser.ts';

describe('without a network', () => {
  let browser: Browser;
  let context: BrowserContext;
  let server: PreviewServer;
  let address = '';
  beforeAll(async () => {
    findPoppler();
    browser = await launch();
    context = await browser.newContext({ viewport: { width: 1000, height: 640 }, deviceScaleFactor: 0.5 });
    server = await preview({
      configFile: false,
      logLevel: 'error',
      build: { outDir: '.reports/app' },
      preview: { host: '127.0.0.1', port: 4404, headers: { 'Content-Security-Policy': servedPolicy } },
    });
    address = server.resolvedUrls?.local[0] as string;
  });
  afterAll(() => leave(browser));

  it('after one visit, with the server gone and the network cut, the page opens anew and all of it works', async () => {
    const page = await context.newPage();
    const faults: string[] = [];
    page.on('pageerror', ({ message }) => faults.push(message));
    page.on('console', (message) => {
      if (message.type() === 'error') faults.push(message.text());
    });
    const menu = page.locator('.menu > summary');
    const press = (name: string) => page.getByRole('button', { name, exact: true }).first().click();

    // what each lock was asked for, and whether there was a picture then
    await page.addInitScript(() => {
      const asked: string[] = [];
      Object.assign(window, { asked });
      const request = navigator.locks.request.bind(navigator.locks) as (...all: unknown[]) => Promise<unknown>;
      navigator.locks.request = (name: string, ...rest: unknown[]) => {
        asked.push(`${name} ${document.querySelector('.picture') ? 'late' : 'early'}`);
        return request(name, ...rest) as never;
      };
    });
    await page.goto(`${address}?samples=1`);
    await menu.click();
    await page.getByText('Ready without a network').waitFor();
    // a newer version in another tab must not throw away what this page is made of, from its first moment on
    expect(await page.evaluate(() => (window as never as { asked: string[] }).asked)).toContainEqual(
      expect.stringMatching(/\/assets\/index-[^/]+\.js early$/),
    );
    await context.setOffline(true);
    await server.close();

    await page.reload();
    await page.locator('.mark').first().waitFor();
    await menu.click();
    // never opened before: each lies in a file of its own
    await page.locator('[data-sample="natural-arch"]').click();
    await expect.poll(() => menu.innerText()).toContain('Natural arch');
    await press('Any side');
    await page.locator('.walkaround canvas').waitFor();
    await press('From above');
    await page.locator('.hour-strip > .unfold').click();
    await page.locator('.night-svg').first().waitFor();
    await press('Place');
    await page.locator('.north-fields p').waitFor();
    await page.waitForFunction(() => window.lampfallProbe?.().isConverged);

    // the card: on screen, on paper, as a PDF, and on the phone
    await press('Card');
    await page.locator('.card-paper svg').first().waitFor();
    await page.evaluate(() => {
      window.print = () => document.body.setAttribute('data-printed', '');
    });
    await press('Print');
    await page.locator('body[data-printed]').waitFor();
    const paper = await page.pdf({ preferCSSPageSize: true });
    expect(poppler('pdfinfo', paper)).toMatch(/Pages:\s+1\n[\s\S]*\(A4\)/);
    const words = poppler('pdftotext', paper, ['-layout'], ['-']);
    for (const word of ['Natural arch', 'COUNT', 'If it came out', 'Where I must not stand'])
      expect(words).toContain(word);
    const download = page.waitForEvent('download');
    await press('PDF');
    expect((await download).suggestedFilename()).toMatch(/\.pdf$/);
    await press('On the phone');
    await page.getByRole('button', { name: 'Too bright' }).waitFor();
    await press('Leave');
    expect(faults).toEqual([]);

    // nobody is asked for anything, and no text becomes script or markup
    const tried = await page.evaluate(async () => {
      const outcome = async (act: () => unknown) => {
        try {
          return String(await act());
        } catch (error) {
          return (error as Error).name;
        }
      };
      const loaded = (element: HTMLElement, source: string) =>
        new Promise((resolve) => {
          element.onload = () => resolve('loaded');
          element.onerror = () => resolve('refused');
          element.setAttribute('src', source);
          document.head.append(element);
        });
      const there = 'https://lampfall.invalid/x';
      return {
        fetch: await outcome(() => fetch(there)),
        image: await outcome(() => loaded(document.createElement('img'), there)),
        script: await outcome(() => loaded(document.createElement('script'), there)),
        worker: await outcome(() => new Worker(there)),
        markup: await outcome(() => Object.assign(document.createElement('p'), { innerHTML: '<b>x</b>' })),
      };
    });
    expect(tried).toEqual({
      fetch: 'TypeError',
      image: 'refused',
      script: 'TypeError',
      worker: 'TypeError',
      markup: 'TypeError',
    });
    await page.close();
  });
});
