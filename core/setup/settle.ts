/** Freezes a document deeply. JSON can't write minus nought, so it becomes nought. */
export const settle = <T>(value: T): T => {
  if (typeof value !== 'object' || value === null || Object.isFrozen(value)) return value;
  for (const [key, child] of Object.entries(value)) {
    if (Object.is(child, -0)) Object.assign(value, { [key]: 0 });
    settle(child);
  }
  return Object.freeze(value);
};
