/** What went wrong with a setup: its size, its JSON, its version, a field's shape, or a reference between fields. */
export type SetupErrorKind = 'size' | 'syntax' | 'version' | 'field' | 'reference';

const maxExpected = 130;
const maxKey = 40;

/** Text on one line, cut to a length; what comes from a file may hold anything. */
const tidy = (text: string, most: number): string => {
  const line = text.replace(/[\p{Cc}\p{Cs}\p{Zl}\p{Zp}]/gu, '\ufffd');
  return line.length > most ? `${line.slice(0, most - 1)}…` : line;
};

/** A setup that can't be used. The message is one line of at most 200 characters, names the field (or line) and says what was expected. */
export class SetupError extends Error {
  override readonly name = 'SetupError';
  readonly kind: SetupErrorKind;
  /** "schemes[0].frames[1].passes[0].on", "line 12", or "" for the document as a whole. */
  readonly path: string;
  /** What was expected there, as a sentence part: "must be before off". */
  readonly expected: string;

  constructor(kind: SetupErrorKind, path: string, expected: string) {
    const room = Math.max(198 - path.length, 40);
    const told = tidy(expected, Math.min(room, maxExpected + (path ? 0 : 60)));
    super(path ? `${path}: ${told}` : told);
    this.kind = kind;
    this.path = path;
    this.expected = told;
  }
}

/** "schemes[0].frames[1].on" from a path of keys and indices; keys that are no plain words are quoted and cut. */
export const pathText = (path: readonly PropertyKey[]): string =>
  path.reduce<string>((text, part) => {
    if (typeof part === 'number') return `${text}[${part}]`;
    const key = tidy(String(part), maxKey);
    if (!/^[\w$-]+…?$/.test(key)) return `${text}["${key}"]`;
    return text ? `${text}.${key}` : key;
  }, '');
