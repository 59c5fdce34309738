import { mkdirSync, writeFileSync } from 'node:fs';
import { chromium } from 'playwright-core';
import { build, preview } from 'vite';
import { findChromium } from '../browser/find-chromium.ts';
import { type Look, longRunRows } from './long-run-rows.ts';
import { residentMegabytes } from './resident-memory.ts';

// Half an hour of use, by a script: does memory stay, do frames stay short?
// `tsx tests/bench/long-run.ts [MINUTES]`; its exit code is 1 where one of them does not, or where the page met a fault
const minutes = Number(process.argv[2] ?? 30);
if (!(minutes > 0)) throw new Error(`minutes must be a number over 0, not "${process.argv[2]}"`);

const outDir = '.reports/long-run';
await build({ logLevel: 'error', build: { outDir: `../../${outDir}`, emptyOutDir: true } });
const server = await preview({ build: { outDir: `../../${outDir}` }, preview: { host: '127.0.0.1', port: 4409 } });
const browser = await chromium.launch({
  executablePath: findChromium(),
  args: ['--no-sandbox', '--use-angle=swiftshader', '--enable-unsafe-swiftshader', '--ignore-gpu-blocklist'],
});
const page = await browser.newPage({ viewport: { width: 1000, height: 640 }, deviceScaleFactor: 0.5 });
const faults: string[] = [];
page.on('pageerror', ({ message }) => faults.push(message));
page.on('console', (message) => message.type() === 'error' && faults.push(message.text()));
await page.goto(`${server.resolvedUrls?.local[0]}?samples=2`);
await page.waitForSelector('.mark');
const session = await page.context().newCDPSession(page);

const quantile = (values: readonly number[], share: number): number =>
  [...values].sort((a, b) => a - b)[Math.min(Math.floor(share * values.length), values.length - 1)] ?? Number.NaN;

/** As text: what runs this file puts helpers of its own into functions, which the page does not know. */
const startFrames = `{
  const times = (window.frameTimes = []);
  const note = (time) => {
    times.push(time);
    if (window.frameTimes === times && times.length < 1000) requestAnimationFrame(note);
  };
  requestAnimationFrame(note);
}`;
const stopFrames = '{ const times = window.frameTimes; window.frameTimes = null; times }';

const draggedFrames = async (): Promise<readonly number[]> => {
  const box = await page.locator('.mark[aria-label^="Key,"] .lamp-disc').boundingBox();
  if (!box) return [];
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.evaluate(startFrames);
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let i = 1; i <= 30; i++) await page.mouse.move(x - 2 * i, y + 3 * i);
  await page.mouse.up();
  const times = await page.evaluate<number[]>(stopFrames);
  return times.slice(1).map((time, i) => time - (times[i] as number));
};

const openSample = async (id: string): Promise<void> => {
  await page.locator('.menu summary').click();
  await page.locator(`[data-sample="${id}"]`).click();
  await page.waitForFunction(() => window.lampfallProbe?.().isConverged, undefined, { timeout: 60_000 });
};
const room = (name: string) => page.getByRole('button', { name, exact: true }).click();
const typed = async (label: string, text: string): Promise<void> => {
  await page.getByLabel(label, { exact: true }).fill(text);
  await page.keyboard.press('Enter');
};

/** What a person does: other samples, rooms there and back, numbers, steps back. */
const round = async (count: number): Promise<readonly number[]> => {
  await openSample(['drystone-wall', 'lone-tree', 'turf-hut'][count % 3] as string);
  for (const name of ['Compare', 'Card', 'Picture']) {
    await room(name);
    await page.waitForTimeout(800);
  }
  await openSample('three-stones');
  await typed('Aperture', count % 2 ? '2.8' : '4');
  const frames = await draggedFrames();
  for (let i = 0; i < 3; i++) await page.getByRole('button', { name: 'Undo' }).click();
  await page.waitForFunction(() => window.lampfallProbe?.().isConverged, undefined, { timeout: 60_000 });
  return frames;
};

const looks: Look[] = [];
const start = performance.now();
const minute = () => (performance.now() - start) / 60_000;
for (let count = 0; minute() < minutes; count++) {
  const frames = await round(count);
  await session.send('HeapProfiler.collectGarbage');
  const { usedSize } = await session.send('Runtime.getHeapUsage');
  looks.push({
    minute: minute(),
    heapMegabytes: usedSize / 1e6,
    residentMegabytes: residentMegabytes(),
    frameMedian: quantile(frames, 0.5),
    frame95th: quantile(frames, 0.95),
  });
}
await browser.close();
await server.close();

mkdirSync('.reports', { recursive: true });
writeFileSync('.reports/long-run.json', JSON.stringify({ minutes, looks, faults }, null, 2));
console.log(
  `${looks.length} rounds in ${minute().toFixed(0)} min; faults: ${faults.length === 0 ? 'none' : faults.join(' | ')}`,
);
const rows = longRunRows(looks);
for (const { line } of rows) console.log(line);
process.exitCode = faults.length === 0 && rows.every(({ holds }) => holds) ? 0 : 1;
