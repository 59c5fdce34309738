const isTree = (value: unknown): value is object => typeof value === 'object' && value !== null;

/** An entry's partner in the value before: the one of the same id where entries have ids, else that in the same place. */
const partnerOf = (before: object, key: string, entry: unknown): unknown => {
  if (Array.isArray(before) && isTree(entry) && 'id' in entry)
    return before.find((other) => isTree(other) && 'id' in other && other.id === entry.id);
  return (before as Record<string, unknown>)[key];
};

/**
 * A value of which everything that is as it was before is the very object from before: what is worked out once for an
 * object is then not worked out again for its copies. Both are plain JSON.
 */
export const keepSame = <T>(before: unknown, now: T): T => {
  if (!isTree(now) || !isTree(before) || Array.isArray(now) !== Array.isArray(before)) return now;
  const entries = Object.entries(now).map(
    ([key, entry]) => [key, keepSame(partnerOf(before, key, entry), entry)] as const,
  );
  const isSame =
    entries.length === Object.keys(before).length &&
    entries.every(([key, entry]) => Object.is(entry, (before as Record<string, unknown>)[key]));
  if (isSame) return before as T;
  return (Array.isArray(now) ? entries.map(([, entry]) => entry) : Object.fromEntries(entries)) as T;
};
