import { useEffect, useId, useState } from 'react';

/** What a typed text comes to, or why it can't be read. */
export type Parsed<T> = { readonly value: T } | { readonly problem: string };

interface ParsedFieldProps<T> {
  readonly label: string;
  /** How the present value is written. */
  readonly text: string;
  readonly parse: (text: string) => Parsed<T>;
  readonly onChange: (value: T) => void;
  readonly list?: string;
  readonly hint?: string;
  /** The arrow keys, where they step. */
  readonly onStep?: (direction: 1 | -1, isLarge: boolean) => void;
}

/**
 * A value that is typed as words or figures. What cannot be read stays in the field with the reason under it, to be set
 * right; Escape gives the old one back.
 */
export const ParsedField = <T,>({ label, text, parse, onChange, list, hint, onStep }: ParsedFieldProps<T>) => {
  const id = useId();
  const [draft, setDraft] = useState<string | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const leave = () => {
    setDraft(null);
    setProblem(null);
  };
  // another document, or an undo: what was typed no longer belongs here
  // biome-ignore lint/correctness/useExhaustiveDependencies: the text is what it goes by
  useEffect(leave, [text]);
  const settle = () => {
    if (draft === null || draft.trim() === text) return leave();
    const parsed = parse(draft);
    if ('problem' in parsed) return setProblem(parsed.problem);
    leave();
    onChange(parsed.value);
  };
  const described = [problem ? `${id}-problem` : '', hint ? `${id}-hint` : ''].filter(Boolean).join(' ');
  return (
    <div className="field parsed-field">
      <label htmlFor={id}>{label}</label>
      <span className={problem ? 'field-box field-wrong' : 'field-box'}>
        <input
          id={id}
          autoComplete="off"
          spellCheck={false}
          list={list}
          value={draft ?? text}
          data-draft={draft !== null}
          aria-invalid={problem !== null}
          aria-describedby={described || undefined}
          onChange={(event) => {
            setDraft(event.currentTarget.value);
            setProblem(null);
          }}
          onBlur={settle}
          onKeyDown={(event) => {
            if (event.key === 'Enter') settle();
            if (event.key === 'Escape') leave();
            const direction = event.key === 'ArrowUp' ? 1 : event.key === 'ArrowDown' ? -1 : null;
            if (!onStep || !direction) return;
            event.preventDefault();
            leave();
            onStep(direction, event.shiftKey);
          }}
        />
      </span>
      {problem && (
        <span role="alert" id={`${id}-problem`} className="parsed-problem">
          {problem}
        </span>
      )}
      {hint && (
        <span id={`${id}-hint`} className="quiet parsed-hint">
          {hint}
        </span>
      )}
    </div>
  );
};
