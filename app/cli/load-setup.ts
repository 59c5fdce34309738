import { readFileSync, statSync } from 'node:fs';
import { readSetup } from '../../core/scan/read-setup.ts';
import type { Setup } from '../../core/setup/schema/setup.ts';
import { SetupError } from '../../core/setup/setup-error.ts';
import { maxFileBytes } from '../../core/setup/setup-size.ts';
import { CommandError, refusalOf } from './command.ts';

const readBytes = (file: string): Uint8Array => {
  try {
    const stat = statSync(file);
    if (stat.isDirectory()) throw new CommandError(`${file}: is a folder; a setup file is needed`);
    // a device or a pipe may never end
    if (!stat.isFile()) throw new CommandError(`${file}: is not a plain file`);
    if (stat.size > maxFileBytes)
      throw new CommandError(
        `${file}: the file has ${(stat.size / 1e6).toFixed(1)} MB; at most ${maxFileBytes / 1e6} MB are read`,
      );
    return readFileSync(file);
  } catch (error) {
    throw error instanceof CommandError ? error : new CommandError(`${file}: ${refusalOf(error)}`);
  }
};

const decode = (file: string, bytes: Uint8Array): string => {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw new CommandError(`${file}: must be UTF-8 text`);
  }
};

/** Reads a setup file. Throws `CommandError` naming the file and the field. */
export const loadSetup = (file: string): Setup => {
  const text = decode(file, readBytes(file));
  try {
    return readSetup(text);
  } catch (error) {
    throw error instanceof SetupError ? new CommandError(`${file}: ${error.message}`) : error;
  }
};
