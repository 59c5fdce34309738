import { describe, expect, it } from 'vitest';
import { boxAt, cautionsFor, find } from '../support/cautions.ts';

const camera = { position: [0, -9, 1.5], aim: [0, 0, 1] };
/** A lamp carried 8 m from west to east in so many seconds; one walks 0.8 m/s. */
const carried = (seconds: number, more: object = {}) => ({
  camera,
  frame: { seconds: 60 },
  pass: {
    off: seconds,
    waypoints: [
      { time: 0, position: [-4, -3, 1], aim: [-4, 0, 1] },
      { time: seconds, position: [4, -3, 1], aim: [4, 0, 1] },
    ],
    ...more,
  },
});

// a tenth over one's own speed: common practice, no published source
describe('too-quick', () => {
  it('tells of a lamp carried faster than one walks, with the seconds that it takes; gone at the limit', () => {
    const limitSeconds = 8 / (0.8 * 1.1);
    const caution = find(carried(limitSeconds - 0.01), 'too-quick');
    expect(caution).toMatchObject({ severity: 'warning', limit: 0.8, passId: 'pass' });
    expect(caution?.value).toBeCloseTo(0.88, 2);
    expect(caution?.message).toContain('Give it 10 s');
    expect(find(carried(limitSeconds + 0.01), 'too-quick')).toBeUndefined();
  });
  it('goes by the stroke: there and back in the same time is twice as quick', () => {
    const there = { off: 12, strokes: 2, waypoints: carried(6).pass.waypoints };
    expect(find(carried(12), 'too-quick')).toBeUndefined();
    expect(find(carried(12, there), 'too-quick')?.message).toContain('Give it 10 s each stroke');
  });
  it('a lamp on a stand, on a rail, goes as fast as it likes; one that is turned only is not carried', () => {
    expect(find(carried(2, { held: 'stand' }), 'too-quick')).toBeUndefined();
    const turned = carried(2).pass.waypoints.map(({ time, aim }) => ({ time, position: [0, -3, 1], aim }));
    expect(find(carried(2, { waypoints: turned }), 'too-quick')).toBeUndefined();
  });
  it('is told of a lamp too that is carried through a subject, which hushes what is said of its light', () => {
    const through = { ...carried(4), subjects: [boxAt('box', [0, -3, 0], [1, 1, 2])] };
    const codes = cautionsFor(through).map(({ code }) => code);
    expect(codes).toContain('inside-subject');
    expect(codes).toContain('too-quick');
    expect(codes).not.toContain('too-dark');
  });
});
