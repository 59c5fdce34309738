import { describe, expect, it } from 'vitest';
import { footprintAreaOf, footprintOf, largestFirst, partFootprintsOf } from '../../../app/web/ui/footprint.ts';
import { buildStage, type StageSubject } from '../../../core/world/stage.ts';
import { subjectOf } from '../../core/support/scenes.ts';
import { placeWith } from './subject-setups.ts';

const slab = (east: number) => ({
  kind: 'box' as const,
  widthMetres: 1,
  depthMetres: 0.5,
  heightMetres: 1,
  position: [east, 0, 0] as [number, number, number],
});
const row = subjectOf('row', [slab(-2), slab(2)], { position: [0, 5, 0] });
const block = subjectOf('block', [{ kind: 'box', widthMetres: 2, depthMetres: 1, heightMetres: 3 }], {
  position: [0, 5, 0],
});
const { ground } = placeWith(row);
const [onRow, onBlock] = buildStage(ground, [row, block]).subjects as [StageSubject, StageSubject];

describe('subjects from above', () => {
  it('show the gaps between their parts', () => {
    const spans = partFootprintsOf(onRow).map((outline) => {
      const easts = outline.map(([east]) => east);
      return [Math.min(...easts), Math.max(...easts)];
    });
    expect(spans).toEqual([
      [-2.5, -1.5],
      [1.5, 2.5],
    ]);
  });

  it('are measured over all that they stand round: 5 m by half a metre, and 2 m by 1 m', () => {
    expect(footprintAreaOf(onRow)).toBeCloseTo(2.5, 9);
    expect(footprintAreaOf(onBlock)).toBeCloseTo(2, 9);
    expect(footprintOf(onRow).length).toBe(4);
  });

  it('are drawn with the largest at the back', () => {
    expect(largestFirst([onBlock, onRow], (subject) => subject)).toEqual([onRow, onBlock]);
  });
});
