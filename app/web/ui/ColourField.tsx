import { useId, useState } from 'react';
import type { Triple } from '../../../core/colour/matrix.ts';
import { hexFromLinear, linearFromHex } from './hex-colour.ts';
import { withinWindow } from './within-window.ts';

interface ColourFieldProps {
  readonly label: string;
  /** Linear sRGB, each 0 to 1. */
  readonly value: Triple;
  /** `run` is set for what is picked: the moves of one picker belong together. */
  readonly onChange: (value: Triple, run?: string) => void;
}

/** A colour: picked, or typed as #rrggbb. */
export const ColourField = ({ label, value, onChange }: ColourFieldProps) => {
  const id = useId();
  const [draft, setDraft] = useState<string | null>(null);
  const [isWrong, setIsWrong] = useState(false);
  const shown = hexFromLinear(value);
  const take = (text: string, run?: string) => {
    const linear = linearFromHex(text);
    setDraft(null);
    setIsWrong(linear === null);
    if (linear && hexFromLinear(linear) !== shown) onChange(linear, run);
  };
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <span className={isWrong ? 'field-box field-wrong' : 'field-box'}>
        <input
          type="color"
          className="colour-picker"
          aria-label={`${label}, pick it`}
          value={shown}
          onChange={(event) => take(event.currentTarget.value, `colour ${id}`)}
        />
        <input
          id={id}
          autoComplete="off"
          spellCheck={false}
          size={7}
          value={draft ?? shown}
          aria-invalid={isWrong}
          aria-describedby={isWrong ? `${id}-problem` : undefined}
          data-draft={draft !== null}
          onFocus={(event) => event.currentTarget.select()}
          onChange={(event) => {
            setDraft(event.currentTarget.value);
            setIsWrong(false);
          }}
          onBlur={() => draft !== null && take(draft)}
          onKeyDown={(event) => {
            if (event.key === 'Enter') take(event.currentTarget.value);
            if (event.key === 'Escape') setDraft(null);
          }}
        />
      </span>
      {isWrong && (
        <span ref={withinWindow} role="alert" id={`${id}-problem`} className="field-problem">
          Type a colour such as #ff8800
        </span>
      )}
    </div>
  );
};
