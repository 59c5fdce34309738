import { mkdirSync, writeFileSync } from 'node:fs';
import { chromium } from 'playwright-core';
import { build, preview } from 'vite';
import { findChromium } from '../browser/find-chromium.ts';
import type { Harness } from '../browser/harness/main.ts';
import { dragLine, dragTimes } from './drag.ts';
import { growsLittle, growthLines, growthTimes } from './growth.ts';
import { lm63ParseTimes } from './lm63-parse.ts';
import { loadLines, loadTimes } from './load.ts';
import { movingPassLines, movingPassTimes } from './moving-pass.ts';
import { scanLine, scanTimes } from './scan.ts';
import { skyLines, skyTimes } from './sky.ts';
import { sweepLine, sweepTimes } from './sweep.ts';
import { treeLines, treeTimes } from './tree.ts';

// Benches, apart from the tests: times as ratios within one run. Prints a table, keeps JSON in .reports/bench.json.
const outDir = '.reports/harness';
await build({
  configFile: false,
  logLevel: 'error',
  root: 'tests/browser/harness',
  base: './',
  build: { outDir: `../../../${outDir}`, emptyOutDir: true, target: 'es2023', chunkSizeWarningLimit: 2000 },
});
const server = await preview({
  configFile: false,
  logLevel: 'error',
  root: '.',
  build: { outDir },
  preview: { host: '127.0.0.1', port: 4403 },
});
const browser = await chromium.launch({
  executablePath: findChromium(),
  args: ['--no-sandbox', '--use-angle=swiftshader', '--enable-unsafe-swiftshader', '--ignore-gpu-blocklist'],
});
const page = await browser.newPage();
await page.goto(server.resolvedUrls?.local[0] ?? '');
const times = await page.evaluate(() => (window as unknown as { harness: Harness }).harness.movedLamp(1280, 720));
const sweep = await sweepTimes(page);
const growths = [await growthTimes(page, 'finer'), await growthTimes(page, 'closer')];
const drag = await dragTimes(page);
const moving = await movingPassTimes(page);
const trees = treeTimes();
const sky = skyTimes();
console.log(skyLines(sky));
console.log(dragLine(drag));
console.log(scanLine(await scanTimes(browser)));
await browser.close();
await server.close();
const load = await loadTimes();
console.log(loadLines(load));

/** Issue bar: the first picture of a moved lamp against one primary-plus-shadow sample. */
const mostRatio = 1.5;
const ratio = times.movedFullMs / times.sampleMs;
mkdirSync('.reports', { recursive: true });
const parse = lm63ParseTimes();
writeFileSync(
  '.reports/bench.json',
  JSON.stringify(
    { movedLamp: { ...times, ratio }, lm63Parse: parse, sweep, growths, drag, trees, moving, sky, load },
    null,
    2,
  ),
);
console.log(`Moved lamp, ${times.triangles} triangles, ${times.width} x ${times.height}, on ${times.card}`);
console.log(`  one sample (first hits and shadows)     ${times.sampleMs.toFixed(1)} ms`);
console.log(
  `  moved lamp to picture, full size        ${times.movedFullMs.toFixed(1)} ms  = ${ratio.toFixed(2)} x   (bar: at most 1.5 x)`,
);
console.log(
  `  moved lamp to picture, an eighth        ${times.movedCoarseMs.toFixed(1)} ms  = ${(times.movedCoarseMs / times.sampleMs).toFixed(2)} x`,
);
console.log(
  `  changed level or exposure               ${times.remixMs.toFixed(1)} ms  = ${(times.remixMs / times.sampleMs).toFixed(2)} x`,
);
console.log(
  `  one sample bounced once, twice          ${times.bouncedOnceMs.toFixed(1)} ms  = ${(times.bouncedOnceMs / times.sampleMs).toFixed(2)} x, ${times.bouncedTwiceMs.toFixed(1)} ms  = ${(times.bouncedTwiceMs / times.sampleMs).toFixed(2)} x`,
);
console.log(
  `Photometric file of ${(parse.bytes / 1e6).toFixed(2)} MB, ${parse.values} values: ${parse.firstMs.toFixed(0)} ms at first, ${parse.medianMs.toFixed(0)} ms once warm (bar: 100 ms)`,
);
console.log(sweepLine(sweep));
for (const growth of growths) console.log(growthLines(growth));
console.log(treeLines(trees));
console.log(movingPassLines(moving));
if (ratio > mostRatio) {
  console.error(`The moved lamp took ${ratio.toFixed(2)} x a sample; the bar is ${mostRatio} x.`);
  process.exitCode = 1;
}
if (!growths.every(growsLittle)) {
  console.error('A sample took more of ten times the triangles than the bar allows.');
  process.exitCode = 1;
}
