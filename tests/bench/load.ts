import { pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';
import { build } from 'vite';
import { findChromium } from '../browser/find-chromium.ts';
import { type Asked, serveCounting } from './serve-counting.ts';

const code = ['html', 'js', 'css'];

/** Milliseconds from navigation, and what was asked for before the first picture. */
interface Load {
  readonly draftMs: number;
  readonly pictureMs: number;
  readonly readingsMs: number;
  readonly asked: readonly Asked[];
}

/** Medians of several cold loads, and the files of one of them. */
export interface LoadTimes extends Load {
  readonly runs: readonly Omit<Load, 'asked'>[];
  readonly gzipBytesByKind: Readonly<Record<string, number>>;
  readonly codeBytes: number;
}

const marks = ['first picture', 'first full picture', 'first readings'];

/** One load in a browser of its own: nothing is cached, not even shaders. */
const loadOnce = async (server: Awaited<ReturnType<typeof serveCounting>>): Promise<Load> => {
  const browser = await chromium.launch({
    executablePath: findChromium(),
    args: [
      '--no-sandbox',
      '--disable-gpu-compositing',
      '--use-angle=swiftshader',
      '--enable-unsafe-swiftshader',
      '--ignore-gpu-blocklist',
    ],
  });
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, serviceWorkers: 'block' });
  const page = await context.newPage();
  server.asked.length = 0;
  await page.goto(server.url, { waitUntil: 'commit' });
  await page.waitForFunction((names) => names.every((name) => performance.getEntriesByName(name).length > 0), marks, {
    timeout: 120_000,
    polling: 250,
  });
  const { origin, times } = await page.evaluate((names) => {
    const timesOf = names.map((name) => performance.getEntriesByName(name)[0]?.startTime ?? Number.NaN);
    return { origin: performance.timeOrigin, times: timesOf };
  }, marks);
  await browser.close();
  const [draftMs, pictureMs, readingsMs] = times as [number, number, number];
  return { draftMs, pictureMs, readingsMs, asked: server.asked.filter(({ at }) => at <= origin + draftMs) };
};

const middle = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1] ?? 0;

/** First visits to the built page at 1440 x 900 in software GL: nothing is cached, and no setup is kept. */
export const loadTimes = async (runs = 5): Promise<LoadTimes> => {
  await build({ logLevel: 'error', build: { outDir: '../../.reports/load', emptyOutDir: true } });
  const server = await serveCounting('.reports/load');
  const loads: Load[] = [];
  for (let i = 0; i < runs; i++) loads.push(await loadOnce(server));
  server.close();
  const asked = loads[0]?.asked ?? [];
  const gzipBytesByKind: Record<string, number> = {};
  for (const { kind, gzipBytes } of asked) gzipBytesByKind[kind] = (gzipBytesByKind[kind] ?? 0) + gzipBytes;
  return {
    draftMs: middle(loads.map(({ draftMs }) => draftMs)),
    pictureMs: middle(loads.map(({ pictureMs }) => pictureMs)),
    readingsMs: middle(loads.map(({ readingsMs }) => readingsMs)),
    runs: loads.map(({ asked: _, ...times }) => times),
    asked,
    gzipBytesByKind,
    codeBytes: code.reduce((sum, kind) => sum + (gzipBytesByKind[kind] ?? 0), 0),
  };
};

const kilobytes = (bytes: number): string => `${(bytes / 1000).toFixed(1)} kB`;
const seconds = (ms: number): string => `${(ms / 1000).toFixed(2)} s`;

export const loadLines = ({ asked, gzipBytesByKind, codeBytes, runs, ...times }: LoadTimes): string => {
  const kinds = Object.entries(gzipBytesByKind).map(([kind, bytes]) => `${kind} ${kilobytes(bytes)}`);
  const largest = [...asked].sort((a, b) => b.gzipBytes - a.gzipBytes).slice(0, 8);
  return [
    `A first visit, nothing cached or kept, 1440 x 900, software GL, median of ${runs.length}`,
    `  first picture, coarse                   ${seconds(times.draftMs)}   (bar: 4 s)`,
    `  first picture, full size                ${seconds(times.pictureMs)}   (bar: 4 s)`,
    `  readings                                ${seconds(times.readingsMs)}`,
    `  code before the first picture           ${kilobytes(codeBytes)} gzipped   (bar: 450 kB); ${kinds.join(', ')}`,
    ...largest.map(({ name, gzipBytes }) => `    ${kilobytes(gzipBytes).padStart(9)}  ${name}`),
  ].join('\n');
};

// alone: npx tsx tests/bench/load.ts
if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  const times = await loadTimes();
  console.log(loadLines(times));
  for (const { draftMs, pictureMs, readingsMs } of times.runs)
    console.log(`  ${seconds(draftMs)}, ${seconds(pictureMs)}, readings ${seconds(readingsMs)}`);
}
