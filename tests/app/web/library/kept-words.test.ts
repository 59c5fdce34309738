import { describe, expect, it } from 'vitest';
import { summaryWords, whenWords } from '../../../../app/web/library/kept-words.ts';
import { copyName } from '../../../../app/web/state/copy-name.ts';

const at = (...of: [number, number, number, number?, number?]) => new Date(...of).getTime();

describe('whenWords', () => {
  const now = at(2026, 2, 12, 0, 30);
  it.each([
    [at(2026, 2, 12, 0, 5), '00:05'],
    [at(2026, 2, 11, 23, 50), 'yesterday 23:50'],
    [at(2026, 2, 10, 23, 50), '10 Mar'],
    [at(2026, 0, 1, 12), '1 Jan'],
    [at(2025, 11, 31, 12), '31 Dec 2025'],
  ])('%d is told as %s', (then, words) => expect(whenWords(then, now)).toBe(words));
});

describe('summaryWords', () => {
  const summary = {
    key: 'k',
    name: 'Hut',
    sampleId: null,
    bytes: 999_999,
    changedAt: at(2026, 2, 12, 14, 20),
    openedAt: 0,
    revision: 'r',
    deletedAt: null,
    thumbnail: null,
  };
  const now = at(2026, 2, 12, 15);
  it('tells the time; a sample’s copy and a large file as well', () => {
    expect(summaryWords(summary, now)).toBe('14:20');
    expect(summaryWords({ ...summary, sampleId: 'lone-tree', bytes: 2_130_000 }, now)).toBe(
      '14:20 · copy of a sample · 2.1 MB',
    );
  });
});

describe('copyName', () => {
  it('is never taken, stays short enough, and does not grow with each copy', () => {
    expect(copyName(['Hut'], 'Hut')).toBe('Hut, second copy');
    expect(copyName(['Hut', 'Hut, second copy'], 'Hut')).toBe('Hut, second copy 2');
    expect(copyName(['Hut', 'Hut, second copy', 'Hut, second copy 2'], 'Hut, second copy 2')).toBe(
      'Hut, second copy 3',
    );
    expect(copyName([], 'x'.repeat(80)).length).toBeLessThanOrEqual(80);
  });
});
