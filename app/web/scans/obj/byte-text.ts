const [newline, back, space, slash, minus, plus, dot, lowerE, upperE, zero, nine] = [
  10, 92, 32, 47, 45, 43, 46, 101, 69, 48, 57,
] as const;
const powers = Float64Array.from({ length: 23 }, (_, power) => 10 ** power);

/** Goes through the bytes of a text, line by line and number by number, without making strings of them. */
export class ByteText {
  private readonly bytes: Uint8Array;
  private at = 0;

  constructor(bytes: Uint8Array, start = 0) {
    this.bytes = bytes;
    this.at = start;
  }

  get position(): number {
    return this.at;
  }

  get isAtEnd(): boolean {
    return this.at >= this.bytes.length;
  }

  private get byte(): number {
    return this.bytes[this.at] ?? newline;
  }

  /** Whether the line goes on behind a backslash at its end. */
  private get isContinued(): boolean {
    if (this.byte !== back) return false;
    const next = this.bytes[this.at + 1];
    return next === newline || (next === 13 && this.bytes[this.at + 2] === newline);
  }

  /** Skips blanks within a line. Tells whether something follows in it. */
  toNextWord(): boolean {
    for (;;) {
      if (this.isContinued) this.at += this.bytes[this.at + 1] === newline ? 2 : 3;
      else if (this.byte <= space && this.byte !== newline && !this.isAtEnd) this.at++;
      else return this.byte !== newline && !this.isAtEnd;
    }
  }

  /** Skips blanks and ends of lines. Tells whether something follows in the file. */
  toNextWordAnywhere(): boolean {
    while (!this.isAtEnd && this.byte <= space) this.at++;
    return !this.isAtEnd;
  }

  /** Skips the rest of the line. */
  toNextLine(): void {
    while (!this.isAtEnd && this.byte !== newline) this.at += this.isContinued ? 2 : 1;
    this.at++;
  }

  /** The word here, at most 80 letters of it. */
  word(): string {
    const start = this.at;
    this.skipWord();
    return new TextDecoder().decode(this.bytes.subarray(start, Math.min(this.at, start + 80)));
  }

  /** The rest of the line as a text, at most 200 letters of it. */
  rest(): string {
    this.toNextWord();
    const start = this.at;
    while (this.byte !== newline) this.at++;
    return new TextDecoder().decode(this.bytes.subarray(start, Math.min(this.at, start + 200))).trim();
  }

  skipWord(): void {
    while (this.byte > space) this.at++;
  }

  /** Whether the text goes on with these letters. */
  startsWith(letters: string): boolean {
    for (let i = 0; i < letters.length; i++) if (this.bytes[this.at + i] !== letters.charCodeAt(i)) return false;
    return true;
  }

  /** Whether the word here is the one letter, and skips it if so. */
  isLetter(letter: string): boolean {
    if (this.byte !== letter.charCodeAt(0) || (this.bytes[this.at + 1] ?? newline) > space) return false;
    this.at++;
    return true;
  }

  /** A decimal number, and the rest of the word skipped; NaN where the word begins otherwise. */
  number(): number {
    const value = this.bareNumber();
    this.skipWord();
    return value;
  }

  /** A whole number up to a slash or the word's end; NaN where there is none. The rest of the word is skipped. */
  whole(): number {
    const value = this.bareNumber();
    const ends = this.byte === slash || this.byte <= space;
    this.skipWord();
    return ends && Number.isInteger(value) ? value : Number.NaN;
  }

  private digits(onDigit: (digit: number) => void): number {
    const start = this.at;
    for (let byte = this.byte; byte >= zero && byte <= nine; byte = this.byte) {
      onDigit(byte - zero);
      this.at++;
    }
    return this.at - start;
  }

  private sign(): number {
    const sign = this.byte === minus ? -1 : 1;
    if (this.byte === minus || this.byte === plus) this.at++;
    return sign;
  }

  private bareNumber(): number {
    const sign = this.sign();
    let [mantissa, dropped] = [0, 0];
    // more digits than a double holds only move the point
    const take = (digit: number) => {
      if (mantissa < 1e15) mantissa = mantissa * 10 + digit;
      else dropped++;
    };
    const whole = this.digits(take);
    let fraction = 0;
    if (this.byte === dot) {
      this.at++;
      fraction = this.digits(take);
    }
    if (whole + fraction === 0) return Number.NaN;
    let exponent = dropped - fraction;
    if (this.byte === lowerE || this.byte === upperE) {
      this.at++;
      const up = this.sign();
      let power = 0;
      const count = this.digits((digit) => {
        power = Math.min(power * 10 + digit, 9999);
      });
      if (count === 0) return Number.NaN;
      exponent += up * power;
    }
    if (exponent === 0) return sign * mantissa;
    if (exponent < 0 && exponent >= -22) return (sign * mantissa) / (powers[-exponent] as number);
    if (exponent > 0 && exponent <= 22) return sign * mantissa * (powers[exponent] as number);
    return sign * mantissa * 10 ** exponent;
  }
}
