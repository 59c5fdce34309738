import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { chromium } from 'playwright-core';
import { findChromium } from '../browser/find-chromium.ts';
import { nodeRays } from './growth.ts';
import { lm63ParseTimes } from './lm63-parse.ts';
import { loadTimes } from './load.ts';
import { otherLines } from './other-lines.ts';
import { pageRows } from './page-rows.ts';
import { buildPage, PageRuns, type Posted, resultsOf } from './page-runs.ts';
import { putIntoReadme } from './readme-table.ts';
import { loadRows } from './rows/load.ts';
import { softwareRuns } from './runs.ts';
import { scanTimes } from './scan.ts';
import { skyTimes } from './sky.ts';
import { markdownOf, plainOf, type Row } from './table.ts';
import { treeTimes } from './tree.ts';

// Benches, apart from the tests: times as ratios within one run. Prints a table, keeps all numbers in
// .reports/bench.json and renews the table in the README where all that it shows were run.
//   npm run bench                      here, in software GL; then what runs in Node
//   npm run bench -- rays remix        some benches of the page alone; the README stays as it is
//   npm run bench -- --build           only builds the page, to be run on a machine with a graphics card
//   npm run bench -- --results FILE    what that machine’s pages posted, a line each, into a table of its own
const words = process.argv.slice(2);
const resultsFile = words[words.indexOf('--results') + 1];
mkdirSync('.reports', { recursive: true });

const machineText = ([first]: readonly Posted[]): string => {
  if (!first) throw new Error('no page posted anything');
  const { card, cores, date } = first.machine;
  return `${card}, ${cores} cores, ${date}`;
};

const keep = (kind: 'software' | 'gpu', posted: readonly Posted[], more: readonly Row[], other: object): void => {
  const rows = [...pageRows(posted), ...more];
  writeFileSync(
    `.reports/bench${kind === 'gpu' ? '-gpu' : ''}.json`,
    JSON.stringify({ rows, posted, ...other }, null, 2),
  );
  console.log(`${machineText(posted)}\n\n${plainOf(rows)}\n`);
  console.log(otherLines(posted, other));
  for (const { bench, error } of posted) if (error) console.error(`${bench}: ${error}`);
  const isWhole =
    ['rays', 'remix', 'readings'].every((bench) => resultsOf(posted, bench).length > 0) &&
    (kind === 'gpu' || 'load' in other);
  if (isWhole) putIntoReadme(kind, `${machineText(posted)}\n\n${markdownOf(rows)}`);
};

const runHere = async (benches: readonly string[]): Promise<void> => {
  const args = ['--no-sandbox', '--use-angle=swiftshader', '--enable-unsafe-swiftshader', '--ignore-gpu-blocklist'];
  const browser = await chromium.launch({ executablePath: findChromium(), args });
  const runs = new PageRuns(browser);
  await runs.open(Number(process.env['LAMPFALL_BENCH_PORT'] ?? 4403));
  for (const { bench, query, isOnRequest } of softwareRuns)
    if (benches.length === 0 ? !isOnRequest : benches.includes(bench)) await runs.run(bench, query);
  await runs.close();
  const whole = benches.length === 0;
  const other = whole
    ? {
        rays: { finer: nodeRays('finer'), closer: nodeRays('closer') },
        lm63Parse: lm63ParseTimes(),
        trees: treeTimes(),
        sky: skyTimes(),
        scan: await scanTimes(browser),
        load: await loadTimes(),
      }
    : null;
  await browser.close();
  keep('software', runs.posted, other ? loadRows(other.load) : [], other ?? {});
};

if (words.includes('--results')) {
  if (!resultsFile) throw new Error('--results: expected the file with what pages posted');
  const lines = readFileSync(resultsFile, 'utf8').split('\n').filter(Boolean);
  keep(
    'gpu',
    lines.map((line) => JSON.parse(line) as Posted),
    [],
    {},
  );
} else {
  await buildPage();
  if (!words.includes('--build')) await runHere(words);
}
