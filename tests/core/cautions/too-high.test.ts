import { describe, expect, it } from 'vitest';
import { boxAt, cautionsFor, find, still } from '../support/cautions.ts';

const held = (up: number, more: object = {}) => ({
  camera: { position: [0, -9, 1.5], aim: [0, 0, 1] },
  pass: { ...still([0, -3, up], [0, 0, 1]), ...more },
});
/** A block 2 m high, on which whoever holds the lamp stands. */
const block = boxAt('block', [0, -4, 0], [6, 6, 2]);

// a pole of 8 m: common practice, no published source
describe('too-high', () => {
  it('tells of a lamp in the hand over 8 m above the feet; gone at the limit', () => {
    const caution = find(held(8.01), 'too-high');
    expect(caution).toMatchObject({ severity: 'warning', limit: 8, passId: 'pass' });
    expect(caution?.value).toBeCloseTo(8.01, 9);
    expect(find(held(7.99), 'too-high')).toBeUndefined();
    expect(find(held(1000), 'too-high')?.message).toContain('1000 m over the feet');
  });

  it('goes by what whoever holds it stands on', () => {
    expect(find({ ...held(9.9), subjects: [block] }, 'too-high')).toBeUndefined();
    expect(find({ ...held(10.1), subjects: [block] }, 'too-high')?.value).toBeCloseTo(8.1, 6);
  });

  it('says nothing of a lamp that stands, and the highest moment of a way counts', () => {
    expect(find(held(20, { held: 'stand' }), 'too-high')).toBeUndefined();
    const waypoints = [
      { time: 0, position: [0, -3, 2], aim: [0, 0, 1] },
      { time: 8, position: [0, -3, 12], aim: [0, 0, 1] },
    ];
    expect(find(held(2, { waypoints, off: 8 }), 'too-high')?.value).toBeCloseTo(12, 6);
  });

  it('is told beside one that is inside a subject, which hushes what is said of its light', () => {
    const mast = boxAt('mast', [0, -3, 8.5], [0.4, 0.4, 1]);
    const codesWith = (subjects: readonly object[]) => cautionsFor({ ...held(9), subjects }).map(({ code }) => code);
    expect(codesWith([])).toEqual(['too-dark', 'too-high']);
    expect(codesWith([mast])).toEqual(['inside-subject', 'too-high']);
  });

  it('is never told as the limit itself', () => {
    expect(find(held(8.02), 'too-high')?.message).toContain('8.1 m over the feet');
  });
});
