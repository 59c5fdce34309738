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
    const process = spawn(inject('chromiumPath'), [...args, `--user-data-dir=${this.folder}`, 'about:blank'], {
      stdio: ['ignore', 'ignore', 'pipe'],
    });
    this.process = process;
    const address = await new Promise<string>((resolve, reject) => {
      let said = '';
      process.stderr?.on('data', (chunk) => {
        said += chunk;
        const found = /DevTools listening on (\S+)/.exec(said)?.[1];
        if (found) resolve(found);
      });
      process.on('exit', () => reject(new Error(`the browser ended: ${said}`)));
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

  /** Ends all of it at once, as a power cut to the program would. */
  async kill(): Promise<void> {
    const { process } = this;
    const ended = new Promise((resolve) => process?.on('exit', resolve));
    process?.kill('SIGKILL');
    await ended;
  }

  async end(): Promise<void> {
    await this.kill();
    rmSync(this.folder, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
  }
}
