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
  const frame = (id: string, iso: number) => ({
    id,
    iso,
    aperture: 8,
    seconds: 30,
    focusMetres: 5,
    whiteBalance: 4000,
  });
  const schemeOf = (...isos: number[]) => ({ frames: isos.map((iso, i) => frame(`f${i}`, iso)) }) as never;
  const back = (frameId: string, seconds: number) =>
    walk({ from: { frameId, passId: 'a' }, to: null, availableSeconds: null, seconds });

  it('adds up ways back to the camera that a frame waits for, and not the last one home', () => {
    const walks = [walk({}), back('f0', 20), walk({ to: { frameId: 'f1', passId: 'a' } }), back('f1', 30)];
    expect(waitedForSeconds(walks, schemeOf(100, 400))).toBe(20);
    // a frame without a lamp comes after the last, set otherwise
    expect(waitedForSeconds(walks, schemeOf(100, 400, 3200))).toBe(50);
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
