/** What of a sweep is wrong: a number of its plan, or the pass that it is made of. */
export type SweepField =
  | 'pass'
  | 'steps'
  | 'heightsMetres'
  | 'distancesMetres'
  | 'gels'
  | 'stops'
  // where the lamp would have to go
  | 'place';

/** A sweep that can't be made. The message is one line: the field, and what was expected of it. */
export class SweepError extends Error {
  override readonly name = 'SweepError';
  readonly field: SweepField;
  /** As a sentence part: "must be a whole number from 1 to 36". */
  readonly expected: string;

  constructor(field: SweepField, expected: string) {
    super(`${field}: ${expected}`);
    this.field = field;
    this.expected = expected;
  }
}
