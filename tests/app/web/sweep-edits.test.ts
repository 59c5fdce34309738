import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { duplicateScheme, renameScheme, setFrameNumber } from '../../../app/web/state/edits/frame-edits.ts';
import { applyCell, schemeOfCell } from '../../../app/web/state/edits/sweep-edits.ts';
import { changePass } from '../../../app/web/state/edits/within.ts';
import { formatSetup } from '../../../core/setup/format-setup.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Pass, Setup } from '../../../core/setup/schema/setup.ts';
import type { SweepCell } from '../../../core/sweep/cell.ts';
import { sweepCells } from '../../../core/sweep/sweep-cells.ts';
import type { SweepPlan } from '../../../core/sweep/sweep-plan.ts';

const stones = parseSetup(readFileSync('assets/setups/three-stones.json', 'utf8'));
const place = { schemeId: 'side', frameId: 'painted', passId: 'key' };
const passOf = (setup: Setup, scheme = 0): Pass => setup.schemes[scheme]?.frames[1]?.passes[0] as Pass;
const cells = sweepCells(stones, place, { kind: 'angles', steps: 4, heightsMetres: [0.5] });
const cell = cells[3] as SweepCell;
const asFile = (setup: Setup) => parseSetup(formatSetup(setup));

describe('applyCell', () => {
  it('puts the cell’s pass in place of the one that was swept, and shares the rest', () => {
    const applied = applyCell(stones, place, cell, 'angles');
    expect(passOf(applied)).toEqual(cell.pass);
    expect(applied.subjects).toBe(stones.subjects);
    expect(applied.schemes.slice(1)).toEqual(stones.schemes.slice(1));
    expect(asFile(applied)).toEqual(applied);
  });

  it('refuses a cell that fits no longer: pass or lamp gone, frame shorter, another pass', () => {
    const shorter = setFrameNumber(stones, place, 'seconds', 4);
    expect(applyCell(shorter, place, cell, 'distances')).toBe(shorter);
    expect(applyCell(stones, { ...place, passId: 'gone' }, cell, 'angles')).toBe(stones);
    const withoutLamp = { ...stones, lamps: [] };
    expect(applyCell(withoutLamp, place, cell, 'angles')).toBe(withoutLamp);
    expect(applyCell(stones, place, { ...cell, pass: { ...cell.pass, id: 'other' } }, 'angles')).toBe(stones);
  });
});

describe('what was edited after a sweep', () => {
  const [from, to] = [passOf(stones).waypoints[0]?.position, [1, 2, 3] as const];
  const edited: Pass = {
    ...passOf(stones),
    name: 'Torch',
    levelPercent: 37,
    on: 1,
    off: 3,
    snootDegrees: 20,
    gels: [{ name: 'Blue', shiftMired: -30, transmission: 0.5, colour: null }],
    waypoints: [{ time: 0, position: [...to], aim: [0, 7, 1] }],
  };
  const before = changePass(stones, place, () => edited);
  const cellOf = (plan: SweepPlan) => sweepCells(stones, place, plan).at(-1) as SweepCell;
  const applied = (plan: SweepPlan) => [passOf(applyCell(before, place, cellOf(plan), plan.kind)), cellOf(plan).pass];

  it.each<SweepPlan>([
    { kind: 'angles', steps: 4, heightsMetres: [0.5] },
    { kind: 'heights', heightsMetres: [2] },
  ])('$kind take the place alone', (plan) => {
    const [now, { waypoints }] = applied(plan) as [Pass, Pass];
    expect(waypoints[0]?.position).not.toEqual(from);
    expect(now).toEqual({ ...edited, waypoints });
  });

  it('distances take place, level and count', () => {
    const [now, of] = applied({ kind: 'distances', distancesMetres: [3] }) as [Pass, Pass];
    const { waypoints, levelPercent, on, off } = of;
    expect(levelPercent).not.toBe(passOf(stones).levelPercent);
    expect(now).toEqual({ ...edited, waypoints, levelPercent, on, off });
  });

  it('gels take the gels alone', () => {
    const gels = [{ name: 'Amber', shiftMired: 60, transmission: 0.8, colour: null }];
    const [now] = applied({ kind: 'gels', gels: [{ name: 'Amber', gels }] }) as [Pass];
    expect(now).toEqual({ ...edited, gels });
  });

  it('ratios take level and count; a walked lamp goes its new way in the new time', () => {
    const cellPass: Pass = { ...passOf(stones), levelPercent: 12, on: 0, off: 6 };
    const ratio = { ...cell, pass: cellPass };
    expect(passOf(applyCell(before, place, ratio, 'ratios'))).toEqual({ ...edited, levelPercent: 12, on: 0, off: 6 });
    const [start] = edited.waypoints as [Pass['waypoints'][number]];
    const end = { ...start, time: 3, position: [5, 2, 3] as [number, number, number] };
    const walked = { ...edited, waypoints: [{ ...start, time: 1 }, end] };
    const now = passOf(
      applyCell(
        changePass(stones, place, () => walked),
        place,
        ratio,
        'ratios',
      ),
    );
    expect(now.waypoints.map(({ time, position }) => [time, position])).toEqual([
      [0, [1, 2, 3]],
      [6, [5, 2, 3]],
    ]);
  });

  it('a shorter frame refuses what sets the count, and nothing else', () => {
    const shorter = setFrameNumber(stones, place, 'seconds', 4);
    expect(applyCell(shorter, place, cell, 'angles')).not.toBe(shorter);
    expect(applyCell(shorter, place, cell, 'distances')).toBe(shorter);
  });
});

describe('schemeOfCell', () => {
  it('makes a scheme after the one that was swept, named after both; the swept one stays', () => {
    const { setup, schemeId } = schemeOfCell(stones, place, cell, 'angles');
    expect(setup.schemes.length).toBe(5);
    expect(setup.schemes[1]).toMatchObject({ id: schemeId, name: 'Side · 3:00 · knee · 0.5 m' });
    expect(passOf(setup, 1)).toEqual(cell.pass);
    expect(setup.schemes[0]).toBe(stones.schemes[0]);
    expect(asFile(setup)).toEqual(setup);
  });

  it('names are at most 80 characters, cut at the scheme’s own name and never within a character', () => {
    for (const name of ['x'.repeat(80), '🌙'.repeat(40), `x${'🌙'.repeat(39)}`]) {
      const long = renameScheme(stones, 'side', name);
      const { setup } = schemeOfCell(long, place, cell, 'angles');
      expect(setup.schemes[1]?.name.length).toBeLessThanOrEqual(80);
      expect(setup.schemes[1]?.name).toMatch(/ · 3:00 · knee · 0\.5 m$/);
      expect(asFile(setup)).toEqual(setup);
      const wordy = schemeOfCell(long, place, { ...cell, row: name, column: name }, 'angles');
      expect(asFile(wordy.setup)).toEqual(wordy.setup);
    }
  });

  it('makes none beyond 24, nor of a cell that fits no longer', () => {
    let full = stones;
    while (full.schemes.length < 24) full = duplicateScheme(full, 'side').setup;
    expect(schemeOfCell(full, place, cell, 'angles')).toEqual({ setup: full, schemeId: 'side' });
    const shorter = setFrameNumber(stones, place, 'seconds', 4);
    expect(schemeOfCell(shorter, place, cell, 'distances')).toEqual({ setup: shorter, schemeId: 'side' });
    expect(schemeOfCell(stones, { ...place, schemeId: 'gone' }, cell, 'angles').setup).toBe(stones);
  });
});
