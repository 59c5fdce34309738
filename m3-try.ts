import { chromium } from 'playwright-core';
import { findChromium } from './tests/browser/find-chromium.ts';
import { buildPage, PageRuns } from './tests/bench/page-runs.ts';
import { pageRows } from './tests/bench/page-rows.ts';
import { plainOf } from './tests/bench/table.ts';
const args = ['--no-sandbox', '--use-angle=swiftshader', '--enable-unsafe-swiftshader', '--ignore-gpu-blocklist'];
await buildPage();
const browser = await chromium.launch({ executablePath: findChromium(), args });
const runs = new PageRuns(browser);
await runs.open(5198);
const push = runs.posted.push.bind(runs.posted);
runs.posted.push = (...p) => { console.log(JSON.stringify(p[0])); return push(...p); };
const q = Object.fromEntries(process.argv.slice(3).map((w) => w.split('=')));
try { await runs.run(process.argv[2]!, q); } catch (e) { console.error(String(e)); }
console.log(plainOf(pageRows(runs.posted)));
await runs.close(); await browser.close();
