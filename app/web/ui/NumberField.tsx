import { type KeyboardEvent, useContext, useEffect, useId, useRef, useState } from 'react';
import { inPageLengths } from './length-field.ts';
import type { NumberFieldProps } from './number-field-props.ts';
import { parseQuantity } from './parse-quantity.ts';
import { StepGesture } from './step-gesture.ts';
import { withinWindow } from './within-window.ts';

/** How long the reason why a number was not taken stays once the field is left. */
const reasonMilliseconds = 6000;

const plain = (value: number, digits: number) => String(Number(value.toFixed(digits)));

/** A number with its unit: type it, or step it with the arrow keys (Shift for ten steps). Escape gives the old one back. */
export const NumberField = (given: NumberFieldProps) => {
  const props = inPageLengths(given);
  const {
    label,
    value,
    unit,
    min,
    max,
    onChange,
    step = 1,
    digits = 2,
    prefix = '',
    format,
    parse,
    ends = [min, max],
    whyMost,
    wraps = false,
  } = props;
  const id = useId();
  const gesture = useContext(StepGesture);
  const isStepping = useRef(false);
  const [draft, setDraft] = useState<string | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const shown = format ? format(value) : plain(value, digits);
  // not "0" of what is small but not nothing
  const endText = (end: number) => (end !== 0 && plain(end, 3) === '0' && format ? format(end) : plain(end, 3));
  const range = `${endText(ends[0])} to ${endText(ends[1])}${unit && ` ${unit}`}`;

  useEffect(() => {
    if (problem === null || draft !== null) return;
    const timer = setTimeout(() => setProblem(null), reasonMilliseconds);
    return () => clearTimeout(timer);
  }, [problem, draft]);
  const leave = () => {
    setDraft(null);
    setProblem(null);
  };
  const settle = (text: string): void => {
    const parsed = parse ? parse(text) : parseQuantity(text, unit);
    if (parsed === null) setProblem(`Type a number, ${range}`);
    else if (parsed < min || parsed > max) setProblem(`${range} only${whyMost && parsed > max ? `: ${whyMost}` : ''}`);
    else {
      leave();
      if (parsed !== value) onChange(parsed);
    }
  };
  const nudge = (direction: 1 | -1, times: number) => {
    let next = value;
    for (let i = 0; i < times; i++) next = typeof step === 'function' ? step(next, direction) : next + direction * step;
    leave();
    const bounded = wraps
      ? min + ((((next - min) % (max - min)) + (max - min)) % (max - min))
      : Math.min(Math.max(next, min), max);
    onChange(Number(bounded.toFixed(6)));
  };
  /** Only its own: a press on the plan begins a drag before this field hears that it lost the focus. */
  const endSteps = () => {
    if (isStepping.current) gesture.end();
    isStepping.current = false;
  };
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    const direction = event.key === 'ArrowUp' ? 1 : event.key === 'ArrowDown' ? -1 : null;
    if (direction) {
      event.preventDefault();
      if (!event.repeat) gesture.begin();
      isStepping.current = true;
      nudge(direction, event.shiftKey ? 10 : 1);
    } else if (event.key === 'Enter') {
      settle(event.currentTarget.value);
      event.currentTarget.select();
    } else if (event.key === 'Escape') leave();
  };
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <span className={problem ? 'field-box field-wrong' : 'field-box'}>
        {prefix && <span aria-hidden="true">{prefix}</span>}
        <input
          id={id}
          inputMode="decimal"
          autoComplete="off"
          value={draft ?? shown}
          size={Math.max((draft ?? shown).length, 2)}
          aria-invalid={problem !== null}
          aria-describedby={problem ? `${id}-problem` : undefined}
          onFocus={(event) => event.currentTarget.select()}
          onChange={(event) => {
            setDraft(event.currentTarget.value);
            setProblem(null);
          }}
          onClick={(event) => draft === null && event.currentTarget.select()}
          onKeyUp={(event) => {
            if (event.key === 'ArrowUp' || event.key === 'ArrowDown') endSteps();
          }}
          onBlur={(event) => {
            endSteps();
            if (draft === null) leave();
            else settle(event.currentTarget.value);
            // what was not taken does not stay beside numbers worked out from the old value; the reason does
            setDraft(null);
          }}
          data-draft={draft !== null}
          onKeyDown={onKeyDown}
        />
        {unit && <span aria-hidden="true">{unit}</span>}
      </span>
      {problem && (
        <span key={problem} ref={withinWindow} role="alert" id={`${id}-problem`} className="field-problem">
          {problem}
        </span>
      )}
    </div>
  );
};
