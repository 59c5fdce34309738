import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { inject } from 'vitest';

// compositing off the card: software GL is slow at it, and the picture is what is tested
const softwareGl = [
  '--disable-gpu-compositing',
  '--use-angle=swiftshader',
  '--enable-unsafe-swiftshader',
  '--ignore-gpu-blocklist',
];

let shared: Promise<Browser> | null = null;

/** The browser of all test files: they run one after the other in one worker, and starting one takes seconds. */
export const launch = (): Promise<Browser> => {
  shared ??= chromium.launch({ executablePath: inject('chromiumPath'), args: ['--no-sandbox', ...softwareGl] });
  return shared;
};

/** Pages that stay open for whoever comes next. */
export const keptPages = new Set<Page>();

/** What went wrong on each page that is open, or was while the present test file ran. */
const faultsOfPages = new Map<Page, string[]>();

/** Fails the test file where anything went wrong on any of its pages, whether a test asked or not. */
const assertNoFaults = (): void => {
  const found = [...faultsOfPages.values()].flat();
  for (const [page, faults] of faultsOfPages) {
    faults.length = 0;
    if (page.isClosed()) faultsOfPages.delete(page);
  }
  if (found.length > 0) throw new Error(`on pages of this file:\n${found.join('\n')}`);
};

/** Closes what a test file leaves open, and fails where anything went wrong on its pages. */
export const leave = async (browser: Browser): Promise<void> => {
  const isLeft = (context: BrowserContext) => !context.pages().some((page) => keptPages.has(page));
  await Promise.all(browser.contexts().map((context) => isLeft(context) && context.close()));
  assertNoFaults();
};

/** A page that remembers what went wrong on it and what it asked of the network beyond its own server. */
export const openPage = async (
  browser: Browser,
  url: string,
  width: number,
  height: number,
  pixelRatio = 1,
  before?: (page: Page) => Promise<void>,
): Promise<{ page: Page; faults: string[] }> => {
  const page = await browser.newPage({
    viewport: { width, height },
    deviceScaleFactor: pixelRatio,
    // keeping all files anew for every page takes time; offline.test.ts is about that
    serviceWorkers: 'block',
  });
  const faults: string[] = [];
  faultsOfPages.set(page, faults);
  const origin = new URL(url).origin;
  page.on('pageerror', (error) => faults.push(`error: ${error.message}`));
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(`console: ${message.text()}`);
  });
  page.on('request', (request) => {
    if (!/^(blob|data):/.test(request.url()) && new URL(request.url()).origin !== origin)
      faults.push(`request: ${request.url()}`);
  });
  await before?.(page);
  await page.goto(url);
  return { page, faults };
};
