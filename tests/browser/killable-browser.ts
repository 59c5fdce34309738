import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type Browser, chromium, type Page } from 'playwright-core';
import { inject } from 'vitest';

/** A browser with a folder of its own on disk, which can be killed without a word and started again on the same folder. */
export class KillableBrowser {
  private readonly folder = mkdtempSync(join(tmpdir(), 'lampfall-kept-'));
  private process: ChildProcess | null = null;
  private browser: Browser | null = null;
  private opening: Promise<unknown> = Promise.resolve();

  async start(): Promise<void> {
    const args = ['--headless', '--no-sandbox', '--disable-gpu', '--remote-debugging-port=0', '--no-first-run'];
    args.push('--window-size=600,500', '--disable-renderer-backgrounding', '--disable-background-timer-throttling');
    const main = spawn(inject('chromiumPath'), [...args, `--user-data-dir=${this.folder}`, 'about:blank'], {
      stdio: ['ignore', 'ignore', 'pipe'],
      // a group of its own, so that all of it can be ended
      detached: true,
    });
    this.process = main;
    const address = await new Promise<string>((resolve, reject) => {
      let said = '';
      main.stderr?.on('data', (chunk) => {
        said += chunk;
        const found = /DevTools listening on (\S+)/.exec(said)?.[1];
        if (found) resolve(found);
      });
      main.on('exit', () => reject(new Error(`the browser ended: ${said}`)));
    });
    this.browser = await chromium.connectOverCDP(address);
  }

  /** A page in a window of its own, so that it is not held back as one behind others. */
  newPage(): Promise<Page> {
    const open = async (): Promise<Page> => {
      const context = this.browser?.contexts()[0];
      if (!this.browser || !context) throw new Error('not started');
      const session = await this.browser.newBrowserCDPSession();
      const page = context.waitForEvent('page');
      await session.send('Target.createTarget', { url: 'about:blank', newWindow: true });
      await session.detach();
      return page;
    };
    // one at a time: pages are known by being the next
    const opened = this.opening.then(open);
    this.opening = opened.catch(() => undefined);
    return opened;
  }

  /** Ends all of it at once, without a word to it. */
  async kill(): Promise<void> {
    const { process: main } = this;
    if (!main?.pid) return;
    const ended = new Promise((resolve) => main.on('exit', resolve));
    process.kill(-main.pid, 'SIGKILL');
    await ended;
  }

  async end(): Promise<void> {
    await this.kill();
    rmSync(this.folder, { recursive: true, force: true, maxRetries: 10, retryDelay: 200 });
  }
}
