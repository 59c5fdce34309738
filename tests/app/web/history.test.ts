import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  beginGesture,
  cancelGesture,
  commitGesture,
  type History,
  keepDocuments,
  record,
  redo,
  startHistory,
  undo,
} from '../../../app/web/state/history.ts';

const present = <T>(history: History<T>) => history.present;

describe('history', () => {
  it('undo and redo walk the entries and stop at both ends', () => {
    const three = [1, 2, 3].reduce((h, n) => record(h, n), startHistory(0));
    expect(present(undo(three))).toBe(2);
    expect(present(undo(undo(undo(undo(three)))))).toBe(0);
    expect(present(redo(undo(three)))).toBe(3);
    expect(redo(three)).toBe(three);
  });

  it('keeps so many documents before the present one, with all their steps', () => {
    const steps = ['a1', 'a2', 'b1', 'c1', 'c2', 'c3', 'd1'];
    const [first = '', ...rest] = steps;
    const all = rest.reduce((h, step) => record(h, step), startHistory(first));
    const areApart = (before: string, after: string) => before[0] !== after[0];
    const kept = (most: number) => keepDocuments(all, most, areApart).past;
    expect(kept(2)).toEqual(['b1', 'c1', 'c2', 'c3']);
    expect(kept(1)).toEqual(['c1', 'c2', 'c3']);
    expect(kept(0)).toEqual([]);
    expect(keepDocuments(all, 3, areApart)).toBe(all);
  });

  it('a gesture is one entry however many steps it has; cancelled it is none', () => {
    const dragged = [1, 2, 3].reduce((h, n) => record(h, n), beginGesture(startHistory(0)));
    expect(commitGesture(dragged).past).toEqual([0]);
    expect(present(undo(commitGesture(dragged)))).toBe(0);
    expect(cancelGesture(dragged)).toEqual(startHistory(0));
  });

  it('an edit that changes nothing is no entry, and keeps what could be redone', () => {
    const undone = undo(record(startHistory(0), 1));
    expect(record(undone, 0)).toBe(undone);
    expect(present(redo(undone))).toBe(1);
  });

  it('steps that continue the one before are one entry; after an undo they are not', () => {
    const held = [2, 3, 4].reduce((h, n) => record(h, n, true), record(startHistory(0), 1));
    expect(held).toMatchObject({ past: [0], present: 4 });
    const back = undo(record(held, 5));
    expect(record(back, 6, true)).toMatchObject({ past: [0, 4], present: 6 });
  });

  it('any run of edits, gestures, undos and redos: undoing to the start gives the start (1,000 runs, seed 11)', () => {
    const step = fc.oneof(
      fc.nat(5).map((n) => (h: History<number>) => record(h, n)),
      fc.constantFrom(beginGesture<number>, commitGesture<number>, cancelGesture<number>, undo<number>, redo<number>),
    );
    fc.assert(
      fc.property(fc.array(step, { maxLength: 60 }), (steps) => {
        let history = steps.reduce((h, apply) => apply(h), startHistory(99));
        for (let i = 0; i < 100; i++) history = undo(history);
        expect(history.present).toBe(99);
        expect(history.past).toEqual([]);
      }),
      { numRuns: 1000, seed: 11 },
    );
  });
});
