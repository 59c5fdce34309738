import { describe, expect, it } from 'vitest';
import { keepSame } from '../../../app/web/workers/keep-same.ts';
import type { ReportRequest } from '../../../app/web/workers/report-messages.ts';
import { setupKeeper, withoutKnownFiles } from '../../../app/web/workers/request-parts.ts';
import { encodeScan } from '../../../core/scan/scan-code.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { stageOf } from '../../../core/world/stage.ts';
import { everyKindSetup } from '../../browser/every-kind.ts';

const setup = parseSetup(JSON.stringify(everyKindSetup()));

/** What comes out of a message: never the objects that went in. */
const posted = (present: Setup, sent: Setup | null): ReportRequest =>
  structuredClone({ id: 1, stageKey: 1, schemeIds: ['s'], ...withoutKnownFiles(present, sent) });

describe('requests to the worker', () => {
  it('a setup arrives as it was', () => {
    expect(setupKeeper()(posted(setup, null))).toEqual(setup);
  });

  it('beams that have not changed are not sent again, and are the same objects to the worker', () => {
    const keep = setupKeeper();
    const one = keep(posted(setup, null));
    const renamed = { ...setup, name: 'Renamed' };
    const request = posted(renamed, setup);
    expect(request.measuredBeams).toBeNull();
    expect(JSON.stringify(request)).not.toContain('candela":[[');
    const two = keep(request);
    expect(two).toEqual(renamed);
    expect(two.measuredBeams).toBe(one.measuredBeams);
    expect(two.subjects).toBe(one.subjects);
  });

  it('beams that have changed are, even when none is left', () => {
    const keep = setupKeeper();
    keep(posted(setup, null));
    const fewer = { ...setup, measuredBeams: setup.measuredBeams.slice(1) };
    expect(keep(posted(fewer, setup)).measuredBeams).toEqual(fewer.measuredBeams);
    expect(keep(posted({ ...setup, measuredBeams: [] }, fewer)).measuredBeams).toEqual([]);
  });

  it('of another stage, what is as it was is the same object to the worker: all but the subject that moved', () => {
    const keep = setupKeeper();
    const one = keep(posted(setup, null));
    const [first, ...others] = setup.subjects as [Setup['subjects'][number], ...Setup['subjects']];
    const moved: Setup = { ...setup, subjects: [...others, { ...first, position: [9, 9, 0] }] };
    const two = keep({ ...posted(moved, setup), stageKey: 2 });
    expect(two).toEqual(moved);
    expect(two.subjects).not.toBe(one.subjects);
    expect(two.measuredBeams).toBe(one.measuredBeams);
    expect(two.ground).toBe(one.ground);
    others.forEach((_, i) => {
      expect(two.subjects[i]).toBe(one.subjects[i + 1]);
    });
    expect(two.subjects.at(-1)).not.toBe(one.subjects[0]);
    expect(two.subjects.at(-1)?.parts).toBe(one.subjects[0]?.parts);
  });

  it('a scan that another one of its id has replaced is drawn as the new one, though its subject is the same object', () => {
    // tents of two triangles, 1 m and 3 m high
    const [low, high] = [1, 3].map((height) =>
      encodeScan({
        positions: Float64Array.from([-1, 0, 1, 1, 0, 1, 0, height, 0, -1, 0, -1, 1, 0, -1]),
        indices: Uint32Array.from([0, 1, 2, 4, 3, 2]),
        colours: null,
      }),
    );
    const setupOf = (packed: typeof low): Setup =>
      parseSetup(
        JSON.stringify({
          ...setup,
          subjects: [{ id: 'rock', name: 'Rock', parts: [{ kind: 'scan', scanId: 'scan' }] }],
          patch: null,
          scans: [{ ...packed, id: 'scan', name: 'Rock', fileName: 'rock.glb' }],
        }),
      );
    const keep = setupKeeper();
    const [before, after] = [setupOf(low), setupOf(high)];
    expect(stageOf(keep(posted(before, null))).subjects[0]?.topMetres).toBeCloseTo(1, 4);
    const kept = keep({ ...posted(after, before), stageKey: 2 });
    expect(kept).toEqual(after);
    expect(stageOf(kept).subjects[0]?.topMetres).toBeCloseTo(3, 4);
  });
});

describe('keepSame', () => {
  it.each<[string, unknown, unknown]>([
    ['a number more', { a: 1 }, { a: 1, b: 2 }],
    ['a number less', { a: 1, b: 2 }, { a: 1 }],
    ['a shorter list', [1, 2, 3], [1, 2]],
    ['a list turned round', [{ id: 'a' }, { id: 'b' }], [{ id: 'b' }, { id: 'a' }]],
    ['a list for an object', { 0: 1 }, [1]],
    ['null', { a: { b: 1 } }, { a: null }],
    [
      'an id twice',
      [{ id: 'a', v: 1 }],
      [
        { id: 'a', v: 1 },
        { id: 'a', v: 2 },
      ],
    ],
  ])('%s: gives the new value, not the old', (_, before, now) => {
    const kept = keepSame(before, now);
    expect(kept).toEqual(now);
    expect(kept).not.toBe(before);
  });
});
