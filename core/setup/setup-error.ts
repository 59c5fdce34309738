/** What went wrong with a setup: its size, its JSON, its version, a field's shape, or a reference between fields. */
export type SetupErrorKind = 'size' | 'syntax' | 'version' | 'field' | 'reference';

/** A setup that can't be used. The message names the field (or line) and says what was expected. */
export class SetupError extends Error {
  override readonly name = 'SetupError';
  readonly kind: SetupErrorKind;
  /** "schemes[0].frames[1].passes[0].on", "line 12", or "" for the document as a whole. */
  readonly path: string;
  /** What was expected there, as a sentence part: "must be before off". */
  readonly expected: string;

  constructor(kind: SetupErrorKind, path: string, expected: string) {
    super(path ? `${path}: ${expected}` : expected);
    this.kind = kind;
    this.path = path;
    this.expected = expected;
  }
}

/** "schemes[0].frames[1].on" from a path of keys and indices. */
export const pathText = (path: readonly PropertyKey[]): string =>
  path.reduce<string>((text, key) => {
    if (typeof key === 'number') return `${text}[${key}]`;
    return text ? `${text}.${String(key)}` : String(key);
  }, '');
