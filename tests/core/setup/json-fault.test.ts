import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jsonFaultOffset } from '../../../core/setup/json-fault.ts';

const seed = 20261009;

const isJson = (text: string): boolean => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};

describe(`jsonFaultOffset (seed ${seed})`, () => {
  it.each([
    ['', 0],
    ['{', 1],
    ['{}x', 2],
    ['[1,]', 3],
    ['{"a":1,}', 7],
    ['{"a" 1}', 5],
    ['[1 2]', 3],
    ['{"a":tru}', 5],
    ['[01]', 1],
    ['[1.]', 1],
    ['[-]', 1],
    ['["\\x"]', 1],
    ['["\\u12"]', 1],
    ['[1}', 2],
    [']', 0],
    ['{1:2}', 1],
    ['"a', 0],
    ['[\u00a01]', 1],
  ])('%j stops being JSON at %i (RFC 8259)', (text, offset) => {
    expect(jsonFaultOffset(text)).toBe(offset);
  });

  it('finds no fault in 500 generated JSON texts: the offset is their length', () => {
    fc.assert(
      fc.property(fc.json({ maxDepth: 4 }), (text) => jsonFaultOffset(text) === text.length),
      { seed, numRuns: 500 },
    );
  });

  it('finds a fault in 2,000 damaged texts: what stands before it can be JSON, and the line is that of the engine', () => {
    let [damaged, compared] = [0, 0];
    const damage = fc.tuple(
      fc.json({ maxDepth: 3 }),
      fc.nat(),
      fc.constantFrom(',', '}', ']', '"', '{', 'x', '\n', ''),
    );
    fc.assert(
      fc.property(damage, ([json, at, put]) => {
        const pretty = JSON.stringify(JSON.parse(json), null, 1);
        const place = at % (pretty.length + 1);
        const text = pretty.slice(0, place) + put + pretty.slice(place + 1);
        if (isJson(text)) return;
        damaged++;
        const offset = jsonFaultOffset(text);
        expect(offset).toBeLessThanOrEqual(text.length);
        // the same text cut at the fault has no earlier fault
        expect(jsonFaultOffset(text.slice(0, offset))).toBe(offset);
        let message = '';
        try {
          JSON.parse(text);
        } catch (error) {
          message = (error as Error).message;
        }
        const position = /at position (\d+)/.exec(message)?.[1];
        if (position === undefined) return;
        compared++;
        const line = (end: number) => text.slice(0, end).split('\n').length;
        expect(line(offset)).toBe(line(Number(position)));
      }),
      { seed, numRuns: 2000 },
    );
    expect(damaged).toBeGreaterThan(1000);
    expect(compared).toBeGreaterThan(100);
  });

  it('stands a text of 4.9 million characters that never closes, within 2 s', () => {
    const start = performance.now();
    expect(jsonFaultOffset(`["${'a'.repeat(4_900_000)}`)).toBe(1);
    expect(jsonFaultOffset(`["${'\\n'.repeat(2_400_000)}`)).toBe(1);
    expect(performance.now() - start).toBeLessThan(2000);
  });
});
