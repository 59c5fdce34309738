// @vitest-environment happy-dom
import { act } from 'react';
import { afterEach, expect, it } from 'vitest';
import { writeLengthsIn } from '../../../app/web/ui/lengths.ts';
import { NumberField } from '../../../app/web/ui/NumberField.tsx';
import type { NumberFieldProps } from '../../../app/web/ui/number-field-props.ts';
import { mounted } from './nightrun/mounted.tsx';

afterEach(() => writeLengthsIn('metres'));

/** What is said of a number that was typed into a field. */
const saidOf = (typed: string, props: Omit<NumberFieldProps, 'label' | 'onChange'>): string | undefined => {
  const page = mounted(<NumberField label="Count" onChange={() => undefined} {...props} />);
  const input = document.querySelector('input') as HTMLInputElement;
  act(() => {
    // as the browser sets it, past React
    Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set?.call(input, typed);
    input.dispatchEvent(new Event('input', { bubbles: true }));
  });
  act(() => void input.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true })));
  const said = document.querySelector('[role="alert"]')?.textContent ?? undefined;
  page.leave();
  return said;
};

it('says why a number can’t be more, only where it is more', () => {
  const count = { value: 0.01, unit: 's', min: 0.01, max: 1 / 60, whyMost: 'the shutter is open no longer' };
  expect(saidOf('2', count)).toBe('0.01 to 0.017 s only: the shutter is open no longer');
  expect(saidOf('0.001', count)).toBe('0.01 to 0.017 s only');
});

it('tells ranges in feet in few figures', () => {
  writeLengthsIn('feet');
  expect(saidOf('99999', { value: 3, unit: 'm', min: 0.05, max: 10000 })).toBe('0.165 to 32800 ft only');
});
