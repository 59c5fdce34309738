import { describe, expect, it } from 'vitest';
import { reportScheme } from '../../../core/cautions/setup-report.ts';
import type { Scheme } from '../../../core/setup/schema/setup.ts';
import { defaultPlan } from '../../../core/sweep/default-plan.ts';
import { setupOfCell } from '../../../core/sweep/setup-of-cell.ts';
import { sweepCells } from '../../../core/sweep/sweep-cells.ts';
import { foundIn, stones, stonesFill, stonesKey, stonesWithFill } from './sweep-setups.ts';

describe('a sweep of ratios', () => {
  const setup = stonesWithFill();
  const cells = sweepCells(setup, stonesFill, { kind: 'ratios', stops: [0, 1, 2.5, 4] });

  it('puts the fill so many stops under the key, as the frame’s readings say (abs 0.02 stops)', () => {
    expect(cells.map(({ column }) => column)).toEqual(['0 stops', '1 stop', '2.5 stops', '4 stops']);
    expect(cells.map(({ row }) => row)).toEqual(Array(4).fill('under Key'));
    expect(cells.map(({ missStops }) => missStops)).toEqual(Array(4).fill(null));
    for (const [i, cell] of cells.entries()) {
      const changed = setupOfCell(setup, stonesFill, cell);
      const frame = reportScheme(changed, changed.schemes[0] as Scheme).frames[1];
      const read = Math.abs((frame?.keyToFillStops ?? Number.NaN) - ([0, 1, 2.5, 4][i] as number));
      expect(read).toBeLessThan(0.02);
      // at the same dose either may be called the key
      if (i > 0) expect(frame).toMatchObject({ keyPassId: 'key', fillPassId: 'fill' });
    }
  });

  it('finds the key as the frame’s reading does among three, one of them aimed at nothing of it (abs 0.02 stops)', () => {
    // a weak third light, and a swept pass that is aimed past the stones but lights them
    const three = stonesWithFill((fill, { schemes }) => {
      const { passes } = schemes[0].frames[1];
      passes.push({ ...structuredClone(fill), id: 'kicker', name: 'Kicker', levelPercent: 1 });
      fill.waypoints = [{ position: [-3, 2, 1.5], aim: [0.2, 7.75, 2.5] }];
    });
    const [cell] = sweepCells(three, stonesFill, { kind: 'ratios', stops: [2] });
    expect(cell).toMatchObject({ row: 'under Key', missStops: null });
    if (!cell) throw new Error('no cell');
    const changed = setupOfCell(three, stonesFill, cell);
    const frame = reportScheme(changed, changed.schemes[0] as Scheme).frames[1];
    expect(frame).toMatchObject({ keyPassId: 'key', fillPassId: 'fill' });
    expect(Math.abs((frame?.keyToFillStops ?? Number.NaN) - 2)).toBeLessThan(0.02);
  });

  it('says by how much a weak fill falls short, and a lamp that can’t be turned down enough is too bright', () => {
    const [reached] = cells;
    // the same fill through an ND gel of eight stops; it was lit 8 s, dimmed or not, of a frame of 2^(10/3) s
    const weak = stonesWithFill((fill) => {
      fill.gels.push({ name: 'ND', transmission: 0.5 ** 8 });
    });
    const [dark] = sweepCells(weak, stonesFill, { kind: 'ratios', stops: [0] });
    const wanted = (reached?.pass.levelPercent ?? 0) * ((reached?.pass.off ?? 0) - (reached?.pass.on ?? 0));
    expect(dark?.missStops).toBeCloseTo(Math.log2((100 * 2 ** (10 / 3)) / (wanted * 2 ** 8)), 6);
    const [bright] = sweepCells(
      stonesWithFill((_, { lamps, schemes }) => {
        lamps.push({ ...lamps[0], id: 'strong', output: { from: 'lumens', lumens: 1e7 }, lowestLevelPercent: 100 });
        schemes[0].frames[1].passes[1].lampId = 'strong';
      }),
      stonesFill,
      { kind: 'ratios', stops: [10] },
    );
    expect(bright?.missStops).toBeGreaterThan(0);
  });

  it('leaves a fill that lights nothing of the key’s subject as it is, and says so', () => {
    const away = stonesWithFill((fill) => {
      fill.waypoints = [{ position: [0.2, 12, 1], aim: [0.2, 40, 1] }];
    });
    const [cell] = sweepCells(away, stonesFill, { kind: 'ratios', stops: [1] });
    expect(cell?.pass).toEqual(foundIn(away, stonesFill).pass);
    expect(cell).toMatchObject({ missStops: null, note: expect.stringContaining('Key') });
  });

  it('needs a key', () => {
    expect(() => sweepCells(stones, stonesKey, { kind: 'ratios', stops: [1] })).toThrow(/^pass: must have a key/);
    // another pass, and nothing but ground that it could be the key of
    const bare = { ...stonesWithFill(), subjects: [] };
    expect(() => sweepCells(bare, stonesFill, { kind: 'ratios', stops: [1] })).toThrow(/^pass: must have a key/);
  });
});

describe('a sweep of gels', () => {
  const { pass, lamp } = foundIn(stones, stonesKey);

  it('puts each stack in place of the pass’s gels, none first, level and count as they are', () => {
    const plan = defaultPlan('gels', pass, lamp);
    const cells = sweepCells(stones, stonesKey, plan);
    expect(cells.slice(0, 6).map(({ column }) => column)).toEqual([
      'no gel',
      '1/8 CTO',
      '1/4 CTO',
      '1/2 CTO',
      'Full CTO',
      '1/2 CTB',
    ]);
    cells.forEach((cell, i) => {
      expect({ ...cell.pass, gels: pass.gels }).toEqual(pass);
      expect(cell.pass.gels.map(({ name }) => name)).toEqual(i === 0 ? [] : [cell.column]);
    });
    // the pass has this gel already
    expect(cells[2]?.pass).toEqual(pass);
  });

  it('leaves out gels that lead a lamp past the ends of the white scale, 1667 and 25 000 K', () => {
    const names = (temperatureKelvin: number) =>
      sweepCells(stones, stonesKey, defaultPlan('gels', pass, { ...lamp, temperatureKelvin })).map((c) => c.column);
    // 1e6/1800 + 64 = 620 mired is 1614 K; 1e6/9000 - 78 = 33 mired is 30 000 K
    expect(names(1800)).not.toContain('1/4 CTO');
    expect(names(1800)).toContain('1/8 CTO');
    expect(names(9000)).not.toContain('1/2 CTB');
    expect(names(9000)).toContain('Full CTO');
  });
});
