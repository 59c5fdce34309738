import { mkdirSync, writeFileSync } from 'node:fs';
import { decode } from 'fast-png';
import type { Browser, Page } from 'playwright-core';
import { inject } from 'vitest';
import type { EngineState } from '../../app/web/render/engine.ts';
import { keptPages, openPage } from './browser.ts';

interface PageOptions {
  readonly width?: number;
  readonly height?: number;
  readonly samples?: number;
  /** Pixels of the screen for one of the page: with half, a quarter is traced. */
  readonly pixelRatio?: number;
  /** Done to a page of its own before it is opened. */
  readonly before?: (page: Page) => Promise<void>;
  /** Whether the page is left to what the test does to it, such as taking its network away. */
  readonly isOwn?: boolean;
}

/** Pages that tests are done with, the oldest first: opening one anew takes longer than most tests. */
const idle: AppPage[] = [];
/** Each holds a graphics context and what it drew. */
const mostIdle = 3;

/** The app in a page, with the handles that flow tests need. */
export class AppPage {
  readonly page: Page;
  readonly faults: string[];
  /** What it was opened for; pages of the same sort stand in for each other. */
  private readonly sort: string;
  private readonly isOwn: boolean;

  private constructor(page: Page, faults: string[], sort: string, isOwn: boolean) {
    this.page = page;
    this.faults = faults;
    this.sort = sort;
    this.isOwn = isOwn;
  }

  /** Opens the built app; few samples, so that the picture is soon done. */
  static async open(browser: Browser, options: PageOptions = {}): Promise<AppPage> {
    const { width = 1000, height = 640, samples = 4, pixelRatio = 0.5, before, isOwn = before !== undefined } = options;
    const sort = `${samples} samples, ${pixelRatio} pixels`;
    const left = isOwn ? undefined : idle.find((app) => app.sort === sort);
    if (left) {
      idle.splice(idle.indexOf(left), 1);
      keptPages.delete(left.page);
      await left.startOver(width, height);
      return left;
    }
    const url = `${inject('appUrl')}?samples=${samples}`;
    const { page, faults } = await openPage(browser, url, width, height, pixelRatio, before);
    await page.waitForSelector('.mark');
    // the strips come after the first picture
    await page.waitForSelector('.subjects', { state: 'attached' });
    return new AppPage(page, faults, sort, isOwn);
  }

  /** The page as when it was opened, without loading it again. */
  private async startOver(width: number, height: number): Promise<void> {
    await this.page.mouse.move(0, 0);
    await this.page.setViewportSize({ width, height });
    await this.page.evaluate(async () => {
      localStorage.clear();
      await window.lampfallStartOver?.();
      scrollTo(0, 0);
    });
    await this.page.waitForSelector('.mark');
  }

  /** Leaves the page to the next test, unless it was the test's own. */
  async close(): Promise<void> {
    if (this.isOwn) return this.page.close();
    idle.push(this);
    keptPages.add(this.page);
    if (idle.length <= mostIdle) return;
    const oldest = idle.shift() as AppPage;
    keptPages.delete(oldest.page);
    await oldest.page.close();
  }

  probe(): Promise<EngineState> {
    return this.page.evaluate(() => {
      const state = window.lampfallProbe?.();
      if (!state) throw new Error('no picture yet');
      return JSON.parse(JSON.stringify(state));
    });
  }

  /** Waits until the picture has all its samples and nothing is left to do. */
  async settled(): Promise<EngineState> {
    // a change reaches the renderer a frame or two after the event that made it
    await this.framesDrawn(5);
    await this.page.waitForFunction(() => window.lampfallProbe?.().isConverged === true, undefined, {
      timeout: 180_000,
    });
    // the mark in the picture's corner goes a moment later
    await this.page.waitForFunction(() =>
      [...document.querySelectorAll('.picture-progress')].every(({ textContent }) => textContent === ''),
    );
    await this.framesDrawn(2);
    return this.probe();
  }

  /** Waits for so many frames of the page, as far as it draws any: 50 ms each at most. */
  private framesDrawn(count: number): Promise<void> {
    return this.page.evaluate(async (frames) => {
      const drawn = async () => {
        for (let i = 0; i < frames; i++) await new Promise(requestAnimationFrame);
      };
      await Promise.race([drawn(), new Promise((resolve) => setTimeout(resolve, 50 * frames))]);
    }, count);
  }

  /** Pixels of the picture as seen on the screen. */
  async picture(): Promise<Uint8Array> {
    const png = await this.page.locator('.picture canvas').screenshot();
    return decode(png).data as Uint8Array;
  }

  lamp(name = 'Key') {
    return this.page.locator(`.mark[aria-label^="${name},"]`);
  }

  /** Middle of the lamp's disc on the screen. */
  async lampPlace(name = 'Key'): Promise<{ x: number; y: number }> {
    const box = await this.lamp(name).locator('.lamp-disc').boundingBox();
    if (!box) throw new Error(`${name} is not on the plan`);
    return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  }

  /** A place on the plan at a clock position round its middle, as a share of half its width. */
  async planPlace(hours: number, share: number): Promise<{ x: number; y: number }> {
    const box = await this.page.locator('.groundplan svg').boundingBox();
    if (!box) throw new Error('no plan');
    const turn = (hours * Math.PI) / 6;
    const reach = (share * box.width) / 2;
    return { x: box.x + box.width / 2 + reach * Math.sin(turn), y: box.y + box.height / 2 - reach * Math.cos(turn) };
  }

  /** Drags a lamp to a clock position round the plan's middle, at a share of half the plan's width. */
  async dragLamp(hours: number, share: number, name = 'Key'): Promise<void> {
    await this.page.locator('.groundplan svg').scrollIntoViewIfNeeded();
    const to = await this.planPlace(hours, share);
    const from = await this.lampPlace(name);
    await this.page.mouse.move(from.x, from.y);
    await this.page.mouse.down();
    for (let i = 1; i <= 8; i++)
      await this.page.mouse.move(from.x + ((to.x - from.x) * i) / 8, from.y + ((to.y - from.y) * i) / 8);
    await this.page.mouse.up();
  }

  async openText(name: string, text: string | Buffer): Promise<void> {
    await this.page.setInputFiles('input[aria-label="Setup file"]', {
      name,
      mimeType: 'application/json',
      buffer: Buffer.from(text),
    });
  }

  caution(code: string) {
    return this.page.locator(`.cautions li[data-code="${code}"]`);
  }

  async keepScreenshot(name: string): Promise<void> {
    mkdirSync('.reports/screens', { recursive: true });
    writeFileSync(`.reports/screens/${name}.png`, await this.page.screenshot());
  }
}

/** Share of bytes that differ by more than `tolerance`. */
export const differingShare = (a: Uint8Array, b: Uint8Array, tolerance = 3): number => {
  if (a.length !== b.length) return 1;
  return a.reduce((count, v, i) => count + (Math.abs(v - (b[i] as number)) > tolerance ? 1 : 0), 0) / a.length;
};
