import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Position } from '../../../core/setup/schema/setup.ts';
import { plainCell } from '../../../core/sweep/cell.ts';
import { defaultPlan } from '../../../core/sweep/default-plan.ts';
import { movedPass } from '../../../core/sweep/move-pass.ts';
import { readCell } from '../../../core/sweep/read-cell.ts';
import { setupOfCell } from '../../../core/sweep/setup-of-cell.ts';
import { sweepCells } from '../../../core/sweep/sweep-cells.ts';
import { SweepError } from '../../../core/sweep/sweep-error.ts';
import { checkPlan, type SweepKind, type SweepPlan } from '../../../core/sweep/sweep-plan.ts';
import { bodyHeightWord } from '../../../core/units/body-height.ts';
import {
  barn,
  barnKey,
  foundIn,
  stones,
  stonesFill,
  stonesKey,
  stonesWithFill,
  throughFile,
  wallPass,
  wallSetup,
} from './sweep-setups.ts';

const errorOf = (run: () => unknown): SweepError => {
  try {
    run();
  } catch (error) {
    if (error instanceof SweepError) return error;
    throw error;
  }
  throw new Error('nothing was refused');
};

const many = (count: number): number[] => Array.from({ length: count }, (_, i) => 1 + i / 100);
const gel = { name: 'x', shiftMired: 1, transmission: 1, colour: null };

describe('absurd plans', () => {
  it.each<readonly [name: string, plan: SweepPlan, field: string, expected: RegExp]>([
    ['no steps', { kind: 'angles', steps: 0, heightsMetres: [1] }, 'steps', /whole number from 1 to 36, not 0/],
    ['37 steps', { kind: 'angles', steps: 37, heightsMetres: [1] }, 'steps', /from 1 to 36, not 37/],
    ['half a step', { kind: 'angles', steps: 1.5, heightsMetres: [1] }, 'steps', /whole number/],
    ['no heights', { kind: 'angles', steps: 2, heightsMetres: [] }, 'heightsMetres', /at least one/],
    ['13 heights', { kind: 'heights', heightsMetres: many(13) }, 'heightsMetres', /at most 12, not 13/],
    ['145 cells', { kind: 'angles', steps: 29, heightsMetres: many(5) }, 'steps', /at most 144 cells.*145/],
    ['too deep', { kind: 'heights', heightsMetres: [0.01] }, 'heightsMetres', /from 0.02 to 2000 m, not 0.01/],
    ['no number', { kind: 'heights', heightsMetres: [Number.NaN] }, 'heightsMetres', /not NaN/],
    ['no distance', { kind: 'distances', distancesMetres: [2, 0.049] }, 'distancesMetres', /from 0\.05 to/],
    ['145 distances', { kind: 'distances', distancesMetres: many(145) }, 'distancesMetres', /at most 144/],
    ['a ratio of 11 stops', { kind: 'ratios', stops: [0, 11] }, 'stops', /from 0 to 10 stops, not 11/],
    ['a fill over the key', { kind: 'ratios', stops: [-1] }, 'stops', /from 0 to 10 stops/],
    ['no gels', { kind: 'gels', gels: [] }, 'gels', /at least one/],
    ['nine gels', { kind: 'gels', gels: [{ name: 'x', gels: Array(9).fill(gel) }] }, 'gels', /at most 8 in a stack/],
  ])('%s: refused by the field, with what was expected', (_, plan, field, expected) => {
    const error = errorOf(() => sweepCells(stones, stonesKey, plan));
    expect(error.field).toBe(field);
    expect(error.expected).toMatch(expected);
    expect(error.message).toBe(`${field}: ${error.expected}`);
  });

  it('just inside the limits are taken', () => {
    checkPlan({ kind: 'angles', steps: 36, heightsMetres: many(4) });
    checkPlan({ kind: 'heights', heightsMetres: [0.02, 2000] });
    checkPlan({ kind: 'distances', distancesMetres: [0.05, 10000] });
    checkPlan({ kind: 'ratios', stops: [0, 10] });
    expect(sweepCells(stones, stonesKey, { kind: 'angles', steps: 36, heightsMetres: many(4) }).length).toBe(144);
  });

  it('a pass that is not there, a lamp straight over its aim, a place outside the document', () => {
    const angles = { kind: 'angles', steps: 2, heightsMetres: [1] } as const;
    expect(errorOf(() => sweepCells(stones, { ...stonesKey, passId: 'no' }, angles)).expected).toContain('"no"');
    expect(errorOf(() => sweepCells(stones, { ...stonesKey, frameId: 'no' }, angles)).field).toBe('pass');
    expect(errorOf(() => sweepCells(stones, { ...stonesKey, schemeId: 'no' }, angles)).expected).toContain(
      'scheme "no"',
    );
    const over = wallSetup({}, { waypoints: [{ position: [0, -4, 3], aim: [0, -4, 1] }] });
    expect(errorOf(() => sweepCells(over, wallPass, angles)).expected).toContain('straight over');
    expect(errorOf(() => sweepCells(over, wallPass, { kind: 'heights', heightsMetres: [1] })).expected).toContain(
      'aim',
    );
    const far = { kind: 'distances', distancesMetres: [9000] } as const;
    expect(errorOf(() => sweepCells(stones, stonesKey, far)).expected).toContain('5000 m');
  });
});

describe('default plans', () => {
  const kinds: readonly SweepKind[] = ['angles', 'heights', 'distances', 'gels', 'ratios'];
  const filled = stonesWithFill();

  it.each(kinds)('%s: can be swept, and every cell’s setup comes back from its file as it was', (kind) => {
    const { pass, lamp } = foundIn(filled, stonesFill);
    const cells = sweepCells(filled, stonesFill, defaultPlan(kind, pass, lamp));
    expect(cells.length).toBeGreaterThanOrEqual(5);
    expect(new Set(cells.map(({ id }) => id)).size).toBe(cells.length);
    for (const cell of cells) {
      const [made, read] = throughFile(filled, stonesFill, cell);
      expect(read).toEqual(made);
      expect(made.subjects).toBe(filled.subjects);
      expect(made.schemes[1]).toBe(filled.schemes[1]);
    }
  });

  it('walk in twelve steps at shin, hip and overhead, and stand from half to 2.8 times as far', () => {
    const { pass, lamp } = foundIn(stones, stonesKey);
    const angles = defaultPlan('angles', pass, lamp);
    expect(angles).toMatchObject({ steps: 12 });
    const words = (plan: SweepPlan) => ('heightsMetres' in plan ? plan.heightsMetres.map(bodyHeightWord) : []);
    expect(words(angles)).toEqual(['shin', 'hip', 'overhead']);
    expect(words(defaultPlan('heights', pass, lamp))).toEqual(['shin', 'knee', 'hip', 'chest', 'overhead']);
    const distances = defaultPlan('distances', pass, lamp);
    // level distance by Pythagoras over the file's [6.2, 7.6] and [0.2, 7.75]
    const shares = 'distancesMetres' in distances ? distances.distancesMetres.map((d) => d / Math.hypot(6, 0.15)) : [];
    [0.5, Math.SQRT1_2, 1, Math.SQRT2, 2, 2 * Math.SQRT2].forEach((share, i) => {
      expect(shares[i]).toBeCloseTo(share, 3);
    });
  });
});

describe('any sweep of any place', () => {
  const coordinate = fc.double({ min: -4900, max: 4900, noNaN: true });
  const up = fc.double({ min: -400, max: 1900, noNaN: true });
  const numbers = (min: number, max: number) =>
    fc.array(fc.double({ min, max, noNaN: true }), { minLength: 1, maxLength: 3 });
  const plan: fc.Arbitrary<SweepPlan> = fc.oneof(
    fc.record({
      kind: fc.constant('angles' as const),
      steps: fc.integer({ min: 1, max: 5 }),
      heightsMetres: numbers(0.02, 2000),
    }),
    fc.record({ kind: fc.constant('heights' as const), heightsMetres: numbers(0.02, 2000) }),
    fc.record({ kind: fc.constant('distances' as const), distancesMetres: numbers(0.05, 9000) }),
  );

  it('gives good documents or a SweepError (80 runs, seed 4)', () => {
    let made = 0;
    const sweepFrom = (position: Position, swept: SweepPlan) => {
      const { pass } = foundIn(barn, barnKey);
      const start = setupOfCell(barn, barnKey, plainCell('start', '', '', movedPass(pass, position)));
      for (const cell of sweepCells(start, barnKey, swept)) {
        const [changed, read] = throughFile(start, barnKey, cell);
        expect(read).toEqual(changed);
        made++;
      }
    };
    const tryOne = (position: Position, swept: SweepPlan) => {
      try {
        sweepFrom(position, swept);
      } catch (error) {
        if (!(error instanceof SweepError)) throw error;
      }
    };
    fc.assert(
      fc.property(fc.tuple(coordinate, coordinate, up), plan, (position, swept) => tryOne(position, swept)),
      { numRuns: 80, seed: 4 },
    );
    expect(made).toBeGreaterThan(40);
  });
});

describe('readCell', () => {
  it('reads the changed pass with the frame’s others, and warns of what it finds', () => {
    const cells = sweepCells(stones, stonesKey, { kind: 'angles', steps: 4, heightsMetres: [1] });
    const reads = cells.map((cell) => readCell(stones, stonesKey, cell));
    // the clock that was asked for is the clock that is read
    expect(reads.map(({ reading }) => reading.clock)).toEqual(['6:00', '9:00', '12:00', '3:00']);
    const codes = reads.map(({ cautions }) => cautions.map(({ code }) => code));
    // a lamp before the camera is flat, one at its side is not (common practice, no published source)
    expect(codes[0]).toContain('near-axis');
    expect(codes[3]).not.toContain('near-axis');
    expect(reads[0]?.cautions[0]).toMatchObject({ passId: 'key', frameId: 'painted' });
  });
});
