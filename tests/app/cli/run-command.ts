import { execFile } from 'node:child_process';
import { resolve } from 'node:path';

export const root = resolve(import.meta.dirname, '../../..');
export const sample = (name: string): string => resolve(root, `assets/setups/${name}.json`);

export interface Ran {
  readonly exitCode: number;
  readonly stdout: string;
  readonly stderr: string;
}

/** Runs `lampfall` as `npm run lampfall` does: tsx on the real main file, in a process of its own. */
export const runLampfall = (...words: readonly string[]): Promise<Ran> =>
  new Promise((done, fail) => {
    const args = [resolve(root, 'node_modules/tsx/dist/cli.mjs'), 'app/cli/main.ts', ...words];
    execFile(process.execPath, args, { cwd: root, encoding: 'utf8', maxBuffer: 1e8 }, (error, stdout, stderr) => {
      if (error && typeof error.code !== 'number') fail(error);
      else done({ exitCode: error ? Number(error.code) : 0, stdout, stderr });
    });
  });
