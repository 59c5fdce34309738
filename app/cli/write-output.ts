import { accessSync, constants, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { CommandError, refusalOf } from './command.ts';

/** Says early that a file can't be written, before minutes of work. Throws `CommandError`. */
export const checkWritable = (file: string): void => {
  try {
    accessSync(dirname(file), constants.W_OK);
  } catch (error) {
    throw new CommandError(`${file}: can't be written: ${refusalOf(error)}`);
  }
  if (statSync(file, { throwIfNoEntry: false })?.isDirectory())
    throw new CommandError(`${file}: can't be written: is a folder`);
};

/** Writes a file whole or not at all: beside its place first, then moved there. Throws `CommandError`. */
export const writeOutput = (file: string, content: Uint8Array | string): void => {
  const draft = `${file}.${process.pid}.part`;
  try {
    writeFileSync(draft, content);
    renameSync(draft, file);
  } catch (error) {
    rmSync(draft, { force: true });
    throw new CommandError(`${file}: can't be written: ${refusalOf(error)}`);
  }
};
