import { type ParseArgsConfig, parseArgs } from 'node:util';
import { CommandError } from './command.ts';

/** The parts of a command line: the one file, and the options by name. */
export interface Words {
  readonly file: string;
  readonly option: (name: string) => string | undefined;
  readonly isSet: (name: string) => boolean;
}

/** Reads the words after a command's name: exactly one file and the known options. Throws `CommandError` with the usage. */
export const readWords = (
  words: readonly string[],
  options: NonNullable<ParseArgsConfig['options']>,
  usage: string,
): Words => {
  const refuse = (why: string): never => {
    throw new CommandError(`${why}; usage: ${usage}`);
  };
  const { values, positionals } = (() => {
    try {
      return parseArgs({ args: [...words], options, allowPositionals: true, strict: true });
    } catch (error) {
      // the first sentence names the option; the rest is advice about quoting
      const reason = error instanceof Error ? error.message : String(error);
      return refuse((reason.split(/\.\s|\n/)[0] as string).replace(/\.$/, ''));
    }
  })();
  const [file, more] = positionals;
  if (!file) return refuse('a setup file is missing');
  if (more !== undefined) return refuse(`one file at a time, not also "${more}"`);
  return {
    file,
    option: (name) => (typeof values[name] === 'string' ? values[name] : undefined),
    isSet: (name) => values[name] !== undefined,
  };
};

/** A whole number of an option, or its default. Throws `CommandError` when it is none or out of range. */
export const wholeOption = (
  { option }: Words,
  name: string,
  [low, high]: readonly [number, number],
  preset: number,
  usage: string,
): number => {
  const text = option(name);
  if (text === undefined) return preset;
  const value = /^\d{1,9}$/.test(text) ? Number(text) : Number.NaN;
  if (value >= low && value <= high) return value;
  throw new CommandError(`--${name} must be a whole number from ${low} to ${high}, not "${text}"; usage: ${usage}`);
};

/** Numbers of an option with commas between, "0.3,1,2"; undefined without it. Throws `CommandError` when one is no number. */
export const numbersOption = ({ option }: Words, name: string, usage: string): number[] | undefined => {
  const text = option(name);
  if (text === undefined) return undefined;
  return text.split(',').map((part) => {
    if (/^\s*-?(?:\d+\.?\d*|\.\d+)\s*$/.test(part)) return Number(part);
    throw new CommandError(
      `--${name} must be numbers with commas between, such as 0.5,1,2, not "${text}"; usage: ${usage}`,
    );
  });
};
