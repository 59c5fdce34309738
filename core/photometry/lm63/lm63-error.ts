/** A photometric file that can't be read: where, and what was expected there. The message is one line. */
export class Lm63Error extends Error {
  override readonly name = 'Lm63Error';
  /** Counted from 1; where the file breaks off, the line of the last thing that was read. */
  readonly line: number;
  /** A sentence part: "must be the number of lamps, a whole number from 1; found "x"". */
  readonly expected: string;

  constructor(line: number, expected: string) {
    super(`line ${line}: ${expected}`);
    this.line = line;
    this.expected = expected;
  }
}

/** A piece of the file in quotes, on one line and cut short, fit for a message. */
export const quoted = (text: string): string => {
  const line = text.slice(0, 25).replace(/[\p{C}\p{Zl}\p{Zp}]/gu, '\ufffd');
  return `"${line.length > 24 ? `${line.slice(0, 23)}…` : line}"`;
};
