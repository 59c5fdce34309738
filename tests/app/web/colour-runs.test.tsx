import type { ReactNode } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { FinishFields } from '../../../app/web/inspector/FinishFields.tsx';
import { FinishNumbers } from '../../../app/web/inspector/FinishNumbers.tsx';
import { GelRow } from '../../../app/web/inspector/GelRow.tsx';
import { MoreOfPart } from '../../../app/web/inspector/parts/MoreOfPart.tsx';
import { SubjectFinish } from '../../../app/web/inspector/subjects/SubjectFinish.tsx';
import { useApp } from '../../../app/web/state/app-store.ts';
import { newPart } from '../../../app/web/state/edits/new-parts.ts';
import { ColourField } from '../../../app/web/ui/ColourField.tsx';
import type { Finish } from '../../../core/setup/schema/setup.ts';
import { elementsOf, type Props } from './element-tree.ts';

const Probe = ({ draw, take }: { draw: () => ReactNode; take: (what: ReactNode) => void }) => {
  take(draw());
  return null;
};

/** What a component returns, hooks and all. */
const drawn = (draw: () => ReactNode): ReactNode => {
  let what: ReactNode = null;
  const take = (made: ReactNode) => {
    what = made;
  };
  renderToStaticMarkup(<Probe draw={draw} take={take} />);
  return what;
};

const propsOf = (node: ReactNode, type: unknown): Props => {
  const found = elementsOf(node).find((each) => each.type === type);
  if (!found) throw new Error('not there');
  return found.props;
};
type Told = [value: unknown, run?: string];
type Call = (...told: Told) => void;

/** What the handler of the first such element passes on when it is told of a step of a run. */
const passedOn = (make: (told: Call) => ReactNode, type: unknown, value: unknown): string | undefined => {
  const calls: Told[] = [];
  const tree = drawn(() => make((...told) => calls.push(told)));
  (propsOf(tree, type)['onChange'] as Call)(value, 'a run');
  expect(calls).toHaveLength(1);
  return calls[0]?.[1];
};

const red: Finish = { reflectance: [0.5, 0.1, 0.1], gloss: 0, metal: false, transmittance: 0, refractiveIndex: 1.5 };
const blue = [0, 0, 0.5] as const;

describe('a colour that is picked', () => {
  it('is told with a run, the same at every move of the picker; one that is typed is a step of its own', () => {
    const calls: Told[] = [];
    const tree = drawn(() =>
      ColourField({ label: 'Colour', value: [1, 1, 1], onChange: (...told: Told) => calls.push(told) }),
    );
    const [picker, field] = elementsOf(tree)
      .filter(({ type }) => type === 'input')
      .map(({ props }) => props);
    picker?.['onChange']?.({ currentTarget: { value: '#ff0000' } });
    picker?.['onChange']?.({ currentTarget: { value: '#ee0000' } });
    field?.['onKeyDown']?.({ key: 'Enter', currentTarget: { value: '#0000ff' } });
    const runs = calls.map(([, run]) => run);
    expect(runs[0]).toBeTypeOf('string');
    expect(runs).toEqual([runs[0], runs[0], undefined]);
  });

  it('is one run through all that stands between the field and the edit', () => {
    const gel = { name: 'Own colour', shiftMired: 0, transmission: 0.5, colour: [1, 0, 0] as [number, number, number] };
    const part = { ...newPart('box'), finish: red };
    expect(
      passedOn((told) => GelRow({ label: 'Gel', gel, onChange: told }), ColourField, blue),
      'gel',
    ).toBe('a run');
    expect(
      passedOn((told) => FinishNumbers({ finish: red, onChange: told }), ColourField, blue),
      'numbers',
    ).toBe('a run');
    expect(
      passedOn((told) => FinishFields({ finish: red, onChange: told }), FinishNumbers, red),
      'fields',
    ).toBe('a run');
    expect(
      passedOn((told) => MoreOfPart({ part, put: told, finishOfSubject: red }), FinishFields, red),
      'part',
    ).toBe('a run');
  });

  it('is one entry of the history for a subject', () => {
    const [stone] = useApp.getState().history.present.subjects;
    if (!stone) throw new Error('no stone');
    const change = propsOf(SubjectFinish({ subject: stone }), FinishFields)['onChange'] as Call;
    const before = useApp.getState().history.past.length;
    for (const share of [0.2, 0.3, 0.4]) change({ ...red, reflectance: [share, 0.1, 0.1] }, 'a run');
    expect(useApp.getState().history.past).toHaveLength(before + 1);
    change(red);
    expect(useApp.getState().history.past).toHaveLength(before + 2);
  });
});
