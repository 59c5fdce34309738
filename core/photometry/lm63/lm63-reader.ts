import { Lm63Error, quoted } from './lm63-error.ts';

const [tab, lineFeed, formFeed, carriageReturn, space, comma, endOfText] = [9, 10, 12, 13, 32, 44, 26] as const;

const isDelimiter = (code: number): boolean =>
  code === space || code === lineFeed || code === carriageReturn || code === comma || code === tab || code === formFeed;

/** Decimal or exponent form; names such as NaN and Infinity, and hexadecimal, are no numbers here. */
const numberForm = /^[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?$/;

const always = (): boolean => true;

/**
 * Walks through a photometric file once: whole lines first, then numbers in free format, between which any mix of
 * commas, spaces, tabs, line ends (LF, CR LF or CR) and form feeds may stand. Knows the line it is on. A byte order mark
 * at the start, and blanks and the old end-of-file mark (code 26) at the end, are let pass.
 */
export class Lm63Reader {
  /** Line, counted from 1, of what was read last. */
  line = 1;
  readonly #text: string;
  readonly #end: number;
  #at: number;
  #lineHere = 1;

  constructor(text: string) {
    this.#text = text;
    this.#at = text.charCodeAt(0) === 0xfeff ? 1 : 0;
    let end = text.length;
    while (end > this.#at && (isDelimiter(text.charCodeAt(end - 1)) || text.charCodeAt(end - 1) === endOfText)) end--;
    this.#end = end;
  }

  /** The next line without blanks round it, or null at the end of the file. */
  nextLine(): string | null {
    if (this.#at >= this.#end) return null;
    const start = this.#at;
    while (this.#at < this.#end && !this.#isLineEnd()) this.#at++;
    const text = this.#text.slice(start, this.#at).trim();
    this.line = this.#lineHere;
    if (this.#at < this.#end) this.#passLineEnd();
    return text;
  }

  /**
   * The next number.
   *
   * @param expected what it must be, for the error: "the number of lamps, a whole number from 1"
   * @throws Lm63Error when it is missing, is no finite decimal number, or is not good
   */
  number(expected: string, isGood: (value: number) => boolean = always): number {
    const token = this.#nextToken();
    if (token === null) throw this.fault(`must go on with ${expected}; the file ends here`);
    const value = numberForm.test(token) ? Number(token) : Number.NaN;
    if (!Number.isFinite(value) || !isGood(value)) throw this.fault(`must be ${expected}; found ${quoted(token)}`);
    // turns minus nought into nought
    return value + 0;
  }

  /** Throws when anything but blanks is left. */
  end(lastThing: string): void {
    const token = this.#nextToken();
    if (token !== null) throw this.fault(`must be blank after ${lastThing}; found ${quoted(token)}`);
  }

  /** An error at what was read last. */
  fault(expected: string): Lm63Error {
    return new Lm63Error(this.line, expected);
  }

  #nextToken(): string | null {
    while (this.#at < this.#end && isDelimiter(this.#text.charCodeAt(this.#at))) {
      if (this.#isLineEnd()) this.#passLineEnd();
      else this.#at++;
    }
    if (this.#at >= this.#end) return null;
    const start = this.#at;
    while (this.#at < this.#end && !isDelimiter(this.#text.charCodeAt(this.#at))) this.#at++;
    this.line = this.#lineHere;
    return this.#text.slice(start, this.#at);
  }

  #isLineEnd(): boolean {
    const code = this.#text.charCodeAt(this.#at);
    return code === lineFeed || code === carriageReturn;
  }

  #passLineEnd(): void {
    const isPair =
      this.#text.charCodeAt(this.#at) === carriageReturn && this.#text.charCodeAt(this.#at + 1) === lineFeed;
    this.#at += isPair ? 2 : 1;
    this.#lineHere++;
  }
}
