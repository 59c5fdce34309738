import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type KeyedRows, rowKeys } from '../../../app/web/ui/use-row-keys.ts';

const [a, b, c, d] = ['a', 'b', 'c', 'd'].map((name) => ({ name })) as [object, object, object, object];
const start = rowKeys({ items: [], keys: [], next: 0 }, [a, b, c]);
const [keyA, keyB, keyC] = start.keys;

describe('keys of rows without ids', () => {
  it('a row that goes takes its key with it; undone, it is a new row and the others stay', () => {
    const less = rowKeys(start, [b, c]);
    expect(less.keys).toEqual([keyB, keyC]);
    const back = rowKeys(less, [a, b, c]);
    expect(back.keys.slice(1)).toEqual([keyB, keyC]);
    expect(start.keys).not.toContain(back.keys[0]);
  });

  it('a row that is changed keeps its key, and one that is added gets another', () => {
    expect(rowKeys(start, [a, d, c]).keys).toEqual(start.keys);
    const { keys } = rowKeys(start, [a, b, c, d]);
    expect(keys.slice(0, 3)).toEqual(start.keys);
    expect(start.keys).not.toContain(keys[3]);
  });

  it('rows that change places take their keys along', () => {
    expect(rowKeys(start, [c, a, b]).keys).toEqual([keyC, keyA, keyB]);
  });

  it('other rows altogether, fewer of them, are all new', () => {
    for (const key of rowKeys(start, [d, { name: 'e' }]).keys) expect(start.keys).not.toContain(key);
  });

  it('no two rows ever share one, and what is the same object never loses it (300 runs, seed 11)', () => {
    const pool = Array.from({ length: 9 }, (_, name) => ({ name }));
    const list = fc.shuffledSubarray(pool, { maxLength: 8 });
    fc.assert(
      fc.property(fc.array(list, { minLength: 1, maxLength: 6 }), (lists) => {
        let rows: KeyedRows = { items: [], keys: [], next: 0 };
        for (const items of lists) {
          const next = rowKeys(rows, items);
          expect(new Set(next.keys).size).toBe(items.length);
          items.forEach((item, i) => {
            const at = rows.items.indexOf(item);
            if (at >= 0) expect(next.keys[i]).toBe(rows.keys[at]);
          });
          rows = next;
        }
      }),
      { numRuns: 300, seed: 11 },
    );
  });
});
