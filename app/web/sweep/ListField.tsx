import { useId, useState } from 'react';
import { parseLength, shownLength } from '../ui/length-field.ts';
import { withinWindow } from '../ui/within-window.ts';
import { parseList } from './parse-list.ts';

interface ListFieldProps {
  readonly label: string;
  readonly values: readonly number[];
  readonly unit: string;
  /** Such as are taken: "0.3, 1, 2.2". */
  readonly example: string;
  readonly parse: (text: string) => number | null;
  /** Why these are not taken, or null when they are. */
  readonly refuse: (values: readonly number[]) => string | null;
  readonly onChange: (values: readonly number[]) => void;
}

/** A few numbers of one unit, typed in a row. Escape gives the old ones back. */
export const ListField = ({ label, values, unit, example, parse, refuse, onChange }: ListFieldProps) => {
  const id = useId();
  const [draft, setDraft] = useState<string | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const shown = values.map((value) => Number(shownLength(value, unit)[0].toFixed(2))).join(', ');
  const settle = (text: string) => {
    if (text === shown) return setProblem(null);
    const read = parseList(text, (part) => parseLength(part, unit, parse));
    const why = read ? refuse(read) : `Type numbers such as ${example}`;
    setProblem(why);
    if (!read || why) return;
    setDraft(null);
    onChange(read);
  };
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <span className={problem ? 'field-box field-wrong' : 'field-box'}>
        <input
          id={id}
          autoComplete="off"
          spellCheck={false}
          value={draft ?? shown}
          size={Math.max((draft ?? shown).length, 4)}
          aria-invalid={problem !== null}
          aria-describedby={problem ? `${id}-problem` : undefined}
          data-draft={draft !== null}
          onFocus={(event) => event.currentTarget.select()}
          onChange={(event) => {
            setDraft(event.currentTarget.value);
            setProblem(null);
          }}
          onBlur={(event) => {
            if (draft !== null) settle(event.currentTarget.value);
            // what was not taken does not stay; the reason does
            setDraft(null);
          }}
          onKeyDown={(event) => {
            if (event.key === 'Enter') settle(event.currentTarget.value);
            if (event.key === 'Escape') {
              setDraft(null);
              setProblem(null);
            }
          }}
        />
        <span aria-hidden="true">{shownLength(0, unit)[1]}</span>
      </span>
      {problem && (
        <span key={problem} ref={withinWindow} role="alert" id={`${id}-problem`} className="field-problem">
          {problem}
        </span>
      )}
    </div>
  );
};
