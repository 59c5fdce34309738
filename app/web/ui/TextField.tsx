import { useId, useState } from 'react';
import { plainLine } from '../../../core/setup/plain-text.ts';

/** A short name, or a line. Empty ones are taken only where they may be. */
export const TextField = ({
  label,
  value,
  onChange,
  longest = 80,
  mayBeEmpty = false,
}: {
  label: string;
  value: string;
  onChange: (value: string) => void;
  longest?: number;
  mayBeEmpty?: boolean;
}) => {
  const id = useId();
  const [draft, setDraft] = useState<string | null>(null);
  const settle = () => {
    const text = draft === null ? value : plainLine(draft, longest);
    setDraft(null);
    if ((text || mayBeEmpty) && text !== value) onChange(text);
  };
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        className="text"
        maxLength={longest}
        value={draft ?? value}
        onChange={(event) => setDraft(event.currentTarget.value)}
        onBlur={settle}
        onKeyDown={(event) => {
          if (event.key === 'Enter') settle();
          if (event.key === 'Escape') setDraft(null);
        }}
      />
    </div>
  );
};
