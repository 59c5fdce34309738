import { useId } from 'react';

interface CheckProps {
  readonly label: string;
  /** What it does, in a few words. */
  readonly note?: string;
  readonly isOn: boolean;
  readonly onChange: (isOn: boolean) => void;
}

/** Something that is on or off. */
export const Check = ({ label, note, isOn, onChange }: CheckProps) => {
  const id = useId();
  return (
    <div className="check">
      <label className="check" htmlFor={id}>
        <input
          id={id}
          type="checkbox"
          checked={isOn}
          aria-describedby={note ? `${id}-note` : undefined}
          onChange={(event) => onChange(event.currentTarget.checked)}
        />
        <span>{label}</span>
      </label>
      {note && (
        <span id={`${id}-note`} className="quiet">
          {note}
        </span>
      )}
    </div>
  );
};
