import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { chromium } from 'playwright-core';

const names = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome', 'chrome'];
const places = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

const advice = `No Chromium was found and none could be installed.
Install Chromium or Chrome, or set LAMPFALL_CHROMIUM to the path of one, and run npm test again.
  Debian or Ubuntu: sudo apt-get install chromium     Elsewhere: npx playwright-core install chromium`;

const onPath = (name: string): string | null => {
  try {
    const finder = process.platform === 'win32' ? 'where' : 'which';
    return (
      execFileSync(finder, [name], { stdio: ['ignore', 'pipe', 'ignore'] })
        .toString()
        .split('\n')[0]
        ?.trim() || null
    );
  } catch {
    return null;
  }
};

const installed = (): string | null => {
  const own = chromium.executablePath();
  return (
    names.map(onPath).find((path) => path !== null) ?? places.find(existsSync) ?? (own && existsSync(own) ? own : null)
  );
};

const attempt = (command: string, args: string[], minutes: number): boolean => {
  console.log(`Looking for a browser: ${command} ${args.join(' ')}`);
  try {
    execFileSync(command, args, {
      stdio: ['ignore', 'ignore', 'ignore'],
      timeout: minutes * 60_000,
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    });
    return true;
  } catch {
    return false;
  }
};

const isRoot = () => process.getuid?.() === 0;

/**
 * Path of a Chromium to test with: LAMPFALL_CHROMIUM, else one that is installed, else one that this installs
 * (Playwright's own download, or Debian's package where we are root). Throws with advice when all fail.
 */
export const findChromium = (): string => {
  const named = process.env['LAMPFALL_CHROMIUM'];
  if (named) {
    if (!existsSync(named)) throw new Error(`LAMPFALL_CHROMIUM names ${named}, which does not exist.`);
    return named;
  }
  const found = installed();
  if (found) return found;
  attempt(process.execPath, ['node_modules/playwright-core/cli.js', 'install', 'chromium'], 4);
  if (!installed() && isRoot() && onPath('apt-get')) {
    attempt('apt-get', ['update', '-qq'], 4);
    attempt('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium'], 10);
  }
  const after = installed();
  if (!after) throw new Error(advice);
  return after;
};
