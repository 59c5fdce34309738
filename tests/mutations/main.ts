import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { type Mutation, mutations } from './mutations.ts';

// Are formulas held by tests? Makes each wrong in a copy of the tree, one at a time, and runs the tests that must notice.

/** What is read of the runner’s report. */
interface Report {
  readonly testResults: readonly {
    readonly assertionResults: readonly { readonly fullName: string; readonly status: string }[];
  }[];
}

const root = resolve(import.meta.dirname, '../..');
const copy = mkdtempSync(join(tmpdir(), 'lampfall-mutations-'));
for (const name of ['core', 'app', 'assets', 'tests', 'package.json', 'tsconfig.json', 'vite.config.ts', 'LICENSE'])
  cpSync(join(root, name), join(copy, name), { recursive: true });
symlinkSync(join(root, 'node_modules'), join(copy, 'node_modules'));

/** The first test that fails; null where all pass. A run of its own each time, so that nothing is kept from the one before. */
const firstFailing = (tests: readonly string[]): string | null => {
  // where the runner’s own settings put it
  const report = join(copy, '.reports/tests.json');
  const words = ['run', '--project', 'core', '--project', 'reference', '--bail', '1'];
  const vitest = join(root, 'node_modules/vitest/vitest.mjs');
  spawnSync(process.execPath, [vitest, ...words, ...tests], { cwd: copy, stdio: 'ignore' });
  const { testResults } = JSON.parse(readFileSync(report, 'utf8')) as Report;
  rmSync(report);
  const done = testResults.flatMap(({ assertionResults }) => assertionResults);
  if (done.length === 0) throw new Error(`no test ran of ${tests.join(', ')}`);
  return done.find(({ status }) => status === 'failed')?.fullName ?? null;
};

const tried = ({ file, from, to, tests }: Mutation): string | null => {
  const path = join(copy, file);
  const text = readFileSync(path, 'utf8');
  if (text.split(from).length !== 2) throw new Error(`${file}: “${from}” must stand there once`);
  writeFileSync(path, text.replace(from, to));
  const first = firstFailing(tests);
  writeFileSync(path, text);
  return first;
};

try {
  const unspoilt = firstFailing([...new Set(mutations.flatMap(({ tests }) => tests))]);
  if (unspoilt !== null) throw new Error(`fails before anything is changed: ${unspoilt}`);
  let missed = 0;
  for (const mutation of mutations) {
    const caughtBy = tried(mutation);
    if (caughtBy === null) missed++;
    console.log(`${caughtBy === null ? 'MISSED' : 'caught'}  ${mutation.kind.padEnd(8)} ${mutation.formula}`);
    console.log(caughtBy === null ? `        ${mutation.file}` : `        by: ${caughtBy}`);
  }
  console.log(`${mutations.length - missed} of ${mutations.length} wrong formulas were caught`);
  process.exitCode = missed > 0 ? 1 : 0;
} finally {
  rmSync(copy, { recursive: true });
}
