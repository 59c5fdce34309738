import { describe, expect, it, vi } from 'vitest';
import { PartSlip } from '../../../app/web/inspector/parts/PartSlip.tsx';
import { Parts } from '../../../app/web/inspector/parts/Parts.tsx';
import { useApp } from '../../../app/web/state/app-store.ts';
import { maxParts } from '../../../app/web/state/edits/subject-limits.ts';
import type { Subject } from '../../../core/setup/schema/setup.ts';
import { subjectOf } from '../../core/support/scenes.ts';
import { elementsOf } from './element-tree.ts';
import { placeWith } from './subject-setups.ts';

/** State as React keeps it from one drawing to the next. */
const kept = vi.hoisted(() => ({ states: [] as unknown[], next: 0 }));
vi.mock('react', async (importOriginal) => ({
  ...(await importOriginal<object>()),
  useState: (first: unknown) => {
    const at = kept.next++;
    if (!(at in kept.states)) kept.states[at] = first;
    const set = (value: unknown) => {
      kept.states[at] = value;
    };
    return [kept.states[at], set];
  },
}));

const subjectNow = (): Subject => useApp.getState().history.present.subjects[0] as Subject;

const draw = () => {
  kept.next = 0;
  const elements = elementsOf(Parts({ subject: subjectNow() }));
  const slips = elements.filter(({ type }) => type === PartSlip).map(({ props }) => props);
  const press = (index: number, what: 'onToggle' | 'onDuplicate' | 'onRemove') => slips[index]?.[what]?.();
  const add = () => elements.findLast(({ type }) => type === 'button')?.props['onClick']?.();
  return { open: slips.flatMap(({ isOpen }, index) => (isOpen ? [index] : [])), press, add };
};

const box = { kind: 'box', widthMetres: 1, depthMetres: 1, heightMetres: 1 };
const open = (count: number) => {
  kept.states.length = 0;
  const parts = Array.from({ length: count }, () => box);
  useApp.getState().open(placeWith(subjectOf('boxes', parts)));
};

describe('the list of parts', () => {
  it('opens the copy, and the part that was added', () => {
    open(3);
    draw().press(0, 'onDuplicate');
    expect(draw().open).toEqual([1]);
    draw().add();
    expect(draw().open).toEqual([4]);
  });

  it('leaves open what is open when a copy or another part is refused', () => {
    open(maxParts);
    draw().press(2, 'onToggle');
    draw().press(2, 'onDuplicate');
    expect(useApp.getState().notice?.tone).toBe('problem');
    expect(draw().open).toEqual([2]);
    draw().add();
    expect(draw().open).toEqual([2]);
  });

  it('leaves the only part open when it is not taken away', () => {
    open(1);
    draw().press(0, 'onToggle');
    draw().press(0, 'onRemove');
    expect(useApp.getState().notice?.tone).toBe('problem');
    expect(draw().open).toEqual([0]);
  });
});
