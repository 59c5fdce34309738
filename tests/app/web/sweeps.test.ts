import { describe, expect, it } from 'vitest';
import { useApp } from '../../../app/web/state/app-store.ts';
import { setFrameNumber } from '../../../app/web/state/edits/frame-edits.ts';
import { setPassLevel } from '../../../app/web/state/edits/pass-edits.ts';
import { applyCell, schemeOfCell } from '../../../app/web/state/edits/sweep-edits.ts';
import { createSweeps, isSweeping, type SweepRun } from '../../../app/web/state/sweeps.ts';
import { missText } from '../../../app/web/sweep/cell-words.ts';
import { hasChanged } from '../../../app/web/sweep/has-changed.ts';
import { cellsOf } from '../../../app/web/sweep/kind-words.ts';
import { parseList } from '../../../app/web/sweep/parse-list.ts';
import { planProblem } from '../../../app/web/sweep/plan-problem.ts';
import { presentCell } from '../../../app/web/sweep/present-cell.ts';
import { sheetOf } from '../../../app/web/sweep/sheet-of.ts';
import { tileToward } from '../../../app/web/sweep/tile-toward.ts';
import { parseHeight } from '../../../app/web/ui/parse-height.ts';
import { parseQuantity } from '../../../app/web/ui/parse-quantity.ts';
import type { CellReading } from '../../../app/web/workers/sweep-messages.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { plainCell, type SweepCell } from '../../../core/sweep/cell.ts';
import { passAt } from '../../../core/sweep/pass-at.ts';
import { readCell } from '../../../core/sweep/read-cell.ts';
import { sweepCells } from '../../../core/sweep/sweep-cells.ts';
import type { SweepPlan } from '../../../core/sweep/sweep-plan.ts';

// the sample that the page opens on: three stones, its key at three o'clock, 6 m off, 0.8 m up
const setup = useApp.getState().history.present;
const place = { schemeId: 'side', frameId: 'painted', passId: 'key' };
const plan: SweepPlan = { kind: 'angles', steps: 4, heightsMetres: [0.8, 2] };
const runOf = (of: SweepPlan): SweepRun => ({
  setup,
  place,
  plan: of,
  showsBlend: false,
  cells: sweepCells(setup, place, of),
});

/** A reader that answers when it is told to. */
const slowReader = () => {
  const asked: { cell: SweepCell; answer: () => void; fail: () => void }[] = [];
  const sweeps = createSweeps(
    (of, at, cell) =>
      new Promise<CellReading>((resolve, reject) =>
        asked.push({ cell, answer: () => resolve(readCell(of, at, cell)), fail: () => reject(new Error('no')) }),
      ),
  );
  /** Lets what was answered arrive. */
  const answer = async (index: number) => {
    asked[index]?.answer();
    await new Promise((resolve) => setTimeout(resolve));
  };
  return { asked, sweeps, answer };
};

describe('the store of a sweep', () => {
  it('asks nothing before it is started, then one cell at a time, in order', async () => {
    const { asked, sweeps, answer } = slowReader();
    sweeps.getState().type(plan);
    expect(asked).toHaveLength(0);
    sweeps.getState().start(setup, place, plan, true);
    const { run } = sweeps.getState();
    for (let i = 0; i < 3; i++) {
      expect(asked.map(({ cell }) => cell.id)).toEqual(run?.cells.slice(0, i + 1).map(({ id }) => id));
      await answer(i);
    }
    expect(Object.keys(sweeps.getState().readings)).toHaveLength(3);
    expect(isSweeping(sweeps.getState())).toBe(true);
  });

  it('asks nothing more once it is cancelled, and keeps what it has', async () => {
    const { asked, sweeps, answer } = slowReader();
    sweeps.getState().start(setup, place, plan, true);
    await answer(0);
    sweeps.getState().cancel();
    await answer(1);
    expect(asked).toHaveLength(2);
    expect(Object.keys(sweeps.getState().readings)).toHaveLength(2);
    expect(sweeps.getState().run?.cells).toHaveLength(8);
    expect(isSweeping(sweeps.getState())).toBe(false);
  });

  it('drops what comes late for the sweep before', async () => {
    const { asked, sweeps, answer } = slowReader();
    sweeps.getState().start(setup, place, plan, true);
    sweeps.getState().start(setup, place, { kind: 'heights', heightsMetres: [1] }, true);
    await answer(0);
    expect(sweeps.getState().readings).toEqual({});
    expect(asked).toHaveLength(2);
    await answer(1);
    expect(Object.keys(sweeps.getState().readings)).toEqual(['heights-0-0']);
  });

  it('is done when pictures and numbers are; numbers that fail are not waited for', async () => {
    const done = { stage: 'done', shown: 1, share: 1 } as const;
    const { asked, sweeps, answer } = slowReader();
    sweeps.getState().start(setup, place, { kind: 'heights', heightsMetres: [1] }, true);
    await answer(0);
    expect(isSweeping(sweeps.getState())).toBe(true);
    sweeps.getState().tellPictures(done);
    expect(isSweeping(sweeps.getState())).toBe(false);
    sweeps.getState().start(setup, place, plan, true);
    sweeps.getState().tellPictures(done);
    expect(isSweeping(sweeps.getState())).toBe(true);
    asked.at(-1)?.fail();
    await new Promise((resolve) => setTimeout(resolve));
    expect(sweeps.getState().hasNoReadings).toBe(true);
    expect(isSweeping(sweeps.getState())).toBe(false);
  });

  it('says what is wrong with a plan and keeps the sweep before', () => {
    const { sweeps } = slowReader();
    sweeps.getState().start(setup, place, plan, true);
    const { run } = sweeps.getState();
    // one lamp alone has no key beside it
    sweeps.getState().start(setup, place, { kind: 'ratios', stops: [1] }, true);
    expect(sweeps.getState().problem?.field).toBe('pass');
    expect(sweeps.getState().run).toBe(run);
  });
});

describe('a list of numbers as typed', () => {
  it.each([
    ['0.3, 1, 2.2 m', [0.3, 1, 2.2]],
    ['2,4,8', [2, 4, 8]],
    ['0,3; 1; 2,2', [0.3, 1, 2.2]],
    ['shin, hip, 2', [0.3, 1, 2]],
    ['3 ft, 1 m,', [0.9144, 1]],
    ['-1', [-1]],
  ])('%s is read', (text, values) => {
    const read = parseList(text, parseHeight) ?? [];
    expect(read).toHaveLength(values.length);
    for (const [i, value] of values.entries()) expect(read[i]).toBeCloseTo(value, 9);
  });

  it.each(['', 'a, b', '1, , 2', '1 2', ';'])('“%s” is refused', (text) => {
    expect(parseList(text, (part) => parseQuantity(part, 'm'))).toBeNull();
  });

  it('tells the number that a plan does not take, in words', () => {
    expect(planProblem({ kind: 'heights', heightsMetres: [0.3, 5000] })).toMatch(/^Heights .*2000 m, not 5000\.$/);
    expect(planProblem({ ...plan, heightsMetres: Array.from({ length: 13 }, () => 1) })).toMatch(/^Heights .*12/);
    expect(planProblem(plan)).toBeNull();
    expect(cellsOf(plan)).toBe(runOf(plan).cells.length);
  });
});

describe('where the lamp is on the sheet', () => {
  const { cells } = runOf(plan);
  const { pass } = passAt(setup, place);

  it('is the cell of its clock and height', () => {
    const at = presentCell('angles', cells, pass);
    expect(at?.isExact).toBe(true);
    expect(cells.find(({ id }) => id === at?.id)).toMatchObject({
      column: '3:00',
      row: expect.stringMatching(/ 0\.8 m$/),
    });
  });

  it('is the nearest cell when it is between them', () => {
    const to = cells.find(({ column, row }) => column === '9:00' && row.endsWith('2 m')) as SweepCell;
    const [point] = to.pass.waypoints;
    const moved = { ...pass, waypoints: point ? [{ ...point, position: [...point.position] }] : [] } as typeof pass;
    (moved.waypoints[0] as { position: number[] }).position[2] = 1.8;
    expect(presentCell('angles', cells, moved)).toEqual({ id: to.id, isExact: false });
  });

  it('is nowhere among gels that it does not have', () => {
    const blue = { name: 'Blue', shiftMired: -50, transmission: 0.5, colour: null };
    const gelled = runOf({ kind: 'gels', gels: [{ name: 'Blue', gels: [blue] }] });
    expect(presentCell('gels', gelled.cells, { ...pass, gels: [] })).toBeNull();
    expect(presentCell('gels', gelled.cells, { ...pass, gels: [blue] })?.isExact).toBe(true);
  });
});

describe('whether a sheet still holds', () => {
  const run = runOf(plan);
  const cell = run.cells[1] as SweepCell;
  const scan: Setup['scans'][number] = {
    id: 'rock',
    name: 'Rock',
    fileName: 'rock.ply',
    triangleCount: 1,
    vertexCount: 3,
    sizeMetres: [1, 1, 1],
    hasColour: false,
    data: 'AAAA',
  };
  it.each([
    ['the lamp is moved to one of its cells', applyCell(setup, place, cell, plan.kind), false],
    ['a scheme is made of one', schemeOfCell(setup, place, cell, plan.kind).setup, false],
    ['the setup gets another name', { ...setup, name: 'Other' }, false],
    ['the pass is dimmed', setPassLevel(setup, place, 50), true],
    ['the frame’s ISO changes', setFrameNumber(setup, place, 'iso', 800), true],
    ['a subject goes', { ...setup, subjects: setup.subjects.slice(1) }, true],
    ['a scan is read anew', { ...setup, scans: [scan] }, true],
    ['the list of scans is another one with the same in it', { ...setup, scans: [...setup.scans] }, false],
    ['its scheme goes', { ...setup, schemes: setup.schemes.filter(({ id }) => id !== place.schemeId) }, true],
  ])('%s', (_, now, changed) => {
    expect(now).not.toBe(setup);
    expect(hasChanged(run, now)).toBe(changed);
  });
});

describe('keys among tiles', () => {
  // three columns: two full lines, then a line of one below a heading
  const boxes = [0, 1, 2, 3, 4, 5, 6].map((i) => ({ left: 100 * (i % 3), top: 80 * Math.floor(i / 3) + (i % 2) }));
  it.each([
    [0, 'ArrowRight', 1],
    [2, 'ArrowRight', 3],
    [6, 'ArrowRight', -1],
    [0, 'ArrowLeft', -1],
    [1, 'ArrowDown', 4],
    [5, 'ArrowDown', 6],
    [4, 'ArrowUp', 1],
    [1, 'ArrowUp', -1],
    [3, 'End', 6],
    [3, 'Home', 0],
    [3, 'a', -1],
  ])('from %i, %s leads to %i', (from, key, to) => {
    expect(tileToward(boxes, from, key)).toBe(to);
  });
});

describe('a sheet in words', () => {
  it('has a group for each height, cells by the clock, and numbers where there are any', () => {
    const run = runOf(plan);
    const cell = run.cells[3] as SweepCell;
    const read = readCell(setup, place, cell);
    const sheet = sheetOf({ run, readings: { [cell.id]: read } });
    expect(sheet.title).toBe('Key · round the clock · Side');
    expect(sheet.groups.map(({ cells }) => cells.map(({ name }) => name))).toEqual([
      ['6:00', '9:00', '12:00', '3:00'],
      ['6:00', '9:00', '12:00', '3:00'],
    ]);
    const [line] = sheet.groups[0]?.cells[3]?.lines ?? [];
    expect(line).toContain(`${Math.round(read.reading.offAxisDegrees)}°`);
    expect(sheet.groups[0]?.cells[0]?.lines).toEqual([]);
    const screens = sheet.groups.flatMap(({ cells }) => cells.map(({ screen }) => screen));
    expect(new Set(screens).size).toBe(8);
  });

  it('says by how much a dose is missed, and nothing when it is met', () => {
    const cell = plainCell('a', 'row', 'column', passAt(setup, place).pass);
    expect(missText(cell)).toBeNull();
    expect(missText({ ...cell, missStops: -1.34 })).toMatch(/^1\.3 stops short/);
    expect(missText({ ...cell, missStops: 0.81 })).toMatch(/^0\.8 stops too much/);
    expect(missText({ ...cell, missStops: 0.01 })).toBeNull();
  });
});
