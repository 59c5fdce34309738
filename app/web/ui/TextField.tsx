import { useId, useState } from 'react';

/** A short name. Empty ones are not taken. */
export const TextField = ({
  label,
  value,
  onChange,
}: {
  label: string;
  value: string;
  onChange: (value: string) => void;
}) => {
  const id = useId();
  const [draft, setDraft] = useState<string | null>(null);
  const settle = () => {
    const text = draft?.trim() ?? '';
    setDraft(null);
    if (text && text !== value) onChange(text.slice(0, 80));
  };
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        className="text"
        maxLength={80}
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
