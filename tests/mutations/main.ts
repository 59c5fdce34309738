import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { startVitest } from 'vitest/node';
import { type Mutation, mutations } from './mutations.ts';

// Are formulas held by tests? Makes each wrong in a copy of the tree, one at a time, and runs the tests that must notice.

const root = resolve(import.meta.dirname, '../..');
const copy = mkdtempSync(join(tmpdir(), 'lampfall-mutations-'));
for (const name of ['core', 'app', 'assets', 'tests', 'package.json', 'tsconfig.json', 'vite.config.ts', 'LICENSE'])
  cpSync(join(root, name), join(copy, name), { recursive: true });
symlinkSync(join(root, 'node_modules'), join(copy, 'node_modules'));

/** Names of the tests that fail, up to the first few; throws where none ran. */
const failing = async (tests: readonly string[]): Promise<readonly string[]> => {
  const vitest = await startVitest('test', [...tests], {
    root: copy,
    config: join(copy, 'vite.config.ts'),
    project: ['core', 'reference'],
    watch: false,
    reporters: [{}],
    bail: 1,
  });
  const modules = vitest.state.getTestModules();
  const done = modules.flatMap((module) => [...module.children.allTests()]);
  const failed = done.filter((test) => test.result().state === 'failed').map((test) => test.fullName);
  const broken = modules.filter((module) => module.errors().length > 0).map((module) => module.moduleId);
  await vitest.close();
  process.exitCode = 0;
  if (done.length === 0) throw new Error(`no test ran of ${tests.join(', ')}`);
  if (broken.length > 0) throw new Error(`could not be run: ${broken.join(', ')}`);
  return failed;
};

const tried = async ({ file, from, to, tests }: Mutation): Promise<string | null> => {
  const path = join(copy, file);
  const text = readFileSync(path, 'utf8');
  if (text.split(from).length !== 2) throw new Error(`${file}: “${from}” must stand there once`);
  writeFileSync(path, text.replace(from, to));
  const [first = null] = await failing(tests);
  writeFileSync(path, text);
  return first;
};

try {
  const unspoilt = await failing([...new Set(mutations.flatMap(({ tests }) => tests))]);
  if (unspoilt.length > 0) throw new Error(`fails before anything is changed: ${unspoilt[0]}`);
  let missed = 0;
  for (const mutation of mutations) {
    const caughtBy = await tried(mutation);
    if (caughtBy === null) missed++;
    console.log(`${caughtBy === null ? 'MISSED' : 'caught'}  ${mutation.kind.padEnd(8)} ${mutation.formula}`);
    console.log(caughtBy === null ? `        ${mutation.file}` : `        by: ${caughtBy}`);
  }
  console.log(`${mutations.length - missed} of ${mutations.length} wrong formulas were caught`);
  process.exitCode = missed > 0 ? 1 : 0;
} finally {
  rmSync(copy, { recursive: true });
}
