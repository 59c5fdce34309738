import { describe, expect, it } from 'vitest';
import { belongsTo, drawnWalks, waitedForSeconds, walkWords } from '../../../app/web/ui/walk-words.ts';
import type { WalkLine } from '../../../core/readings/walk-lines.ts';

const key = (passId: string) => ({ frameId: 'f', passId });
const walk = (part: Partial<WalkLine>): WalkLine => ({
  from: null,
  to: key('a'),
  metres: 16.2,
  seconds: 32.4,
  availableSeconds: 10,
  hazardIds: [],
  roundHazardIds: [],
  points: [
    [0, 0],
    [16, 0],
  ],
  ...part,
});

describe('walkWords', () => {
  it('says metres and seconds, and between passes by how much one comes too late', () => {
    expect(walkWords(walk({}))).toBe('16 m · 32 s');
    expect(walkWords(walk({ from: key('b') }))).toBe('16 m · 32 s, 22 s too late');
    expect(walkWords(walk({ from: key('b'), availableSeconds: 40 }))).toBe('16 m · 32 s');
    expect(walkWords(walk({ from: key('b'), to: null, availableSeconds: null }))).toBe('16 m · 32 s');
  });
});

describe('drawnWalks', () => {
  it('leaves out steps on the spot, and a way back that is the way out again', () => {
    const out = walk({});
    const back = walk({ from: key('a'), to: null, availableSeconds: null });
    expect(drawnWalks([out, back])).toEqual([out]);
    const longer = { ...back, metres: 20 };
    expect(drawnWalks([out, longer])).toEqual([out, longer]);
    const fromOther = { ...back, from: key('b') };
    const turn = walk({ from: key('a'), to: key('b'), metres: 0.2 });
    expect(drawnWalks([out, turn, fromOther])).toEqual([out, fromOther]);
  });
});

describe('waitedForSeconds', () => {
  // a lamp that goes off 5 s before its shutter closes, at 60 s
  const frame = (id: string, iso: number) => ({
    id,
    iso,
    aperture: 8,
    seconds: 60,
    delaySeconds: 10,
    focusMetres: 5,
    whiteBalance: 4000,
    passes: [{ id: 'a', off: 55 }],
  });
  const schemeOf = (...isos: number[]) => ({ frames: isos.map((iso, i) => frame(`f${i}`, iso)) }) as never;
  const back = (frameId: string, seconds: number) =>
    walk({ from: { frameId, passId: 'a' }, to: null, availableSeconds: null, seconds });

  it('adds up what is still to walk when the shutter has closed, where the next frame is set otherwise', () => {
    const walks = [walk({}), back('f0', 20), walk({ to: { frameId: 'f1', passId: 'a' } }), back('f1', 30)];
    expect(waitedForSeconds(walks, schemeOf(100, 400))).toBe(15);
    // a third comes after the last lamp, set otherwise
    expect(waitedForSeconds(walks, schemeOf(100, 400, 3200))).toBe(15 + 25);
    // another is exposed as the first is, meanwhile
    expect(waitedForSeconds([back('f0', 80)], schemeOf(100, 100, 400))).toBe(80 - 5 - 10 - 60);
    // one is back before the shutter closes
    expect(waitedForSeconds([back('f0', 4)], schemeOf(100, 400))).toBe(0);
    // all are set alike: one stays in the field
    expect(waitedForSeconds([walk({}), back('f1', 30)], schemeOf(100, 100))).toBe(0);
  });
});

describe('belongsTo', () => {
  it('is the pass that a way leads to; the way back belongs to the last', () => {
    expect(belongsTo(walk({ from: key('b') }), 'f', 'a')).toBe(true);
    expect(belongsTo(walk({ from: key('b') }), 'f', 'b')).toBe(false);
    expect(belongsTo(walk({ from: key('b'), to: null }), 'f', 'b')).toBe(true);
    expect(belongsTo(walk({}), 'other', 'a')).toBe(false);
  });
});
