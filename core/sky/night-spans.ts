/** A stretch of time. */
export interface Span {
  readonly startMilliseconds: number;
  readonly endMilliseconds: number;
}

/** The stretches that are in both lists. Each list is in order and without overlap; so is the result. */
export const spansInBoth = (a: readonly Span[], b: readonly Span[]): readonly Span[] =>
  a.flatMap((one) =>
    b.flatMap((other) => {
      const startMilliseconds = Math.max(one.startMilliseconds, other.startMilliseconds);
      const endMilliseconds = Math.min(one.endMilliseconds, other.endMilliseconds);
      return startMilliseconds < endMilliseconds ? [{ startMilliseconds, endMilliseconds }] : [];
    }),
  );
