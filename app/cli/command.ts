/** A fault that the person at the terminal can mend. `main.ts` prints its message on one line; there is no stack. */
export class CommandError extends Error {
  override readonly name = 'CommandError';
}

/** What a command says, and to whom. */
export interface Terminal {
  /** What was asked for. */
  readonly print: (text: string) => void;
  /** What is said beside it: faults, and how long it takes. */
  readonly tell: (text: string) => void;
  /** Whether a person reads what is told. */
  readonly isWatched: boolean;
}

/** One command of the program. */
export interface Command {
  /** "lampfall check FILE". */
  readonly usage: string;
  /** What it does, in one sentence. */
  readonly about: string;
  /** Does the work with the words after the command's name. Throws `CommandError`, or rejects with one. */
  readonly run: (words: readonly string[], terminal: Terminal) => void | Promise<void>;
}

/** Why the system refused a file, in plain words. */
export const refusalOf = (error: unknown): string => {
  const code = (error as { code?: unknown } | null)?.code;
  switch (code) {
    case 'ENOENT':
      return 'there is no such file or folder';
    case 'EISDIR':
      return 'is a folder';
    case 'ENOTDIR':
      return 'part of the path is a file, not a folder';
    case 'EACCES':
    case 'EPERM':
      return 'access is denied';
    case 'EROFS':
      return 'the disk is read-only';
    case 'ENOSPC':
      return 'the disk is full';
    case 'ENAMETOOLONG':
      return 'the name is too long';
    case 'ERR_INVALID_ARG_VALUE':
      return 'is not a file name';
    default:
      return `the system says ${typeof code === 'string' ? code : 'no'}`;
  }
};

/** Text made fit for one line of a terminal: control characters and line ends become spaces. */
export const oneLine = (text: string): string =>
  text
    .replace(/[\p{Cc}\p{Zl}\p{Zp}\p{Cs}]+/gu, ' ')
    .trim()
    .slice(0, 2000);
