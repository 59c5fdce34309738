/** What stands behind a number or a caution, for whoever asks: sentences and plain notation, lengths in metres. */
export interface About {
  /** What it is called, where it is listed. */
  readonly name: string;
  /** What it says, in a sentence or two. */
  readonly says: string;
  /** How it is worked out, with units; of a caution, when it is told. */
  readonly rule: string;
  /** Where rule and limit come from, or that nobody published them. */
  readonly source: string;
}

/** What is told of a rule that the trade keeps and nobody published. */
export const commonPractice = 'Common practice, no published source.';
