import { execFile } from 'node:child_process';
import { resolve } from 'node:path';
import type { Terminal } from '../../../app/cli/command.ts';
import { runLine } from '../../../app/cli/run-line.ts';

export const root = resolve(import.meta.dirname, '../../..');
export const sample = (name: string): string => resolve(root, `assets/setups/${name}.json`);

export interface Ran {
  readonly exitCode: number;
  readonly stdout: string;
  readonly stderr: string;
}

/** Where nobody listens. */
export const nobody: Terminal = { print: () => {}, tell: () => {}, isWatched: false };

/** Runs `lampfall` in this process. */
export const runLampfall = async (...words: readonly string[]): Promise<Ran> => {
  const [printed, told]: [string[], string[]] = [[], []];
  const exitCode = await runLine(words, {
    print: (text) => printed.push(text),
    tell: (text) => told.push(text),
    isWatched: false,
  });
  return { exitCode, stdout: printed.join(''), stderr: told.join('') };
};

/** Runs it as `npm run lampfall` does: tsx on the real main file, in a process of its own. */
export const runLampfallAlone = (...words: readonly string[]): Promise<Ran> =>
  new Promise((done, fail) => {
    const args = [resolve(root, 'node_modules/tsx/dist/cli.mjs'), 'app/cli/main.ts', ...words];
    execFile(process.execPath, args, { cwd: root, encoding: 'utf8', maxBuffer: 1e8 }, (error, stdout, stderr) => {
      if (error && typeof error.code !== 'number') fail(error);
      else done({ exitCode: error ? Number(error.code) : 0, stdout, stderr });
    });
  });
