import { useState } from 'react';

/** The rows of a list whose entries have no ids, each with a key of its own. */
export interface KeyedRows {
  readonly items: readonly object[];
  readonly keys: readonly number[];
  /** The key that the next new row gets. */
  readonly next: number;
}

const none: KeyedRows = { items: [], keys: [], next: 0 };

/**
 * Keys for a list after an edit: an entry that is the same object keeps its key wherever it is now. Where as many are
 * there as before, one that was changed keeps that of its place; all others are new.
 */
export const rowKeys = (before: KeyedRows, items: readonly object[]): KeyedRows => {
  let { next } = before;
  const isSameLength = items.length === before.items.length;
  const keys = items.map((item, place) => {
    const at = before.items.indexOf(item);
    if (at >= 0) return before.keys[at] as number;
    const there = before.items[place];
    return isSameLength && there && !items.includes(there) ? (before.keys[place] as number) : next++;
  });
  return { items, keys, next };
};

/** A key for each entry of a list, kept from one drawing to the next. */
export const useRowKeys = (items: readonly object[]): readonly number[] => {
  const [rows, setRows] = useState(() => rowKeys(none, items));
  if (rows.items === items) return rows.keys;
  const now = rowKeys(rows, items);
  setRows(now);
  return now.keys;
};
