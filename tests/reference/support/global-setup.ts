import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { basename } from 'node:path';
import { type AccuracySection, accuracyFolder } from './accuracy.ts';
import { accuracyTable, mergeSections, summaryLine } from './accuracy-table.ts';

const folder = 'tests/reference';
const file = `${folder}/ACCURACY.md`;
/** Fewest checks that the whole run must make. */
const fewestChecks = 150;

const readParts = (names: readonly string[]): AccuracySection[] =>
  names.map((name) => JSON.parse(readFileSync(`${accuracyFolder}/${name}`, 'utf8')) as AccuracySection);

/** Test files that record checks and have not done so in this run. */
const missing = (names: readonly string[]): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.test.ts'))
    .filter((path) => readFileSync(`${folder}/${path}`, 'utf8').includes('accuracySection('))
    .filter((path) => !names.some((left) => left.startsWith(`${basename(path)}-`)));

/** Fails the run: what is thrown after the tests is only printed. */
const fail = (message: string): void => {
  console.error(`FAIL ${message}`);
  process.on('exit', () => {
    process.exitCode = 1;
  });
};

/** Before the reference tests: an empty folder. After them: the summary, and ACCURACY.md where all of them ran. */
export default function setup(): () => void {
  rmSync(accuracyFolder, { recursive: true, force: true });
  mkdirSync(accuracyFolder, { recursive: true });
  return () => {
    const names = readdirSync(accuracyFolder);
    const sections = mergeSections(readParts(names));
    if (sections.length === 0) return;
    const count = sections.reduce((sum, { rows }) => sum + rows.length, 0);
    console.log(`\nReference checks: ${count}\n${sections.map((section) => `  ${summaryLine(section)}`).join('\n')}\n`);
    if (missing(names).length > 0 || sections.some(({ hasFailed }) => hasFailed)) return;
    if (count < fewestChecks) return fail(`only ${count} reference checks ran; at least ${fewestChecks} must`);
    const table = accuracyTable(sections);
    if (table === readFileSync(file, { encoding: 'utf8', flag: 'a+' })) return;
    if (process.env['CI']) return fail(`${file} is out of date: run npm test and commit it`);
    writeFileSync(file, table);
    console.log(`${file} was out of date and has been written anew: commit it.`);
  };
}
