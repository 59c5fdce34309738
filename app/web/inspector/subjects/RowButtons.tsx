interface RowButtonProps {
  /** Whose. */
  readonly name: string;
  readonly isOn: boolean;
  readonly onChange: (isOn: boolean) => void;
}

/** An eye, struck through when the thing is left out of the picture. */
export const HideButton = ({ name, isOn, onChange }: RowButtonProps) => (
  <button
    type="button"
    className="row-button"
    aria-label={`Hide ${name}`}
    title={isOn ? 'Hidden: press to show it again' : 'Hide'}
    aria-pressed={isOn}
    onClick={() => onChange(!isOn)}
  >
    <svg viewBox="0 0 20 20" width={18} height={18} aria-hidden="true">
      <path d="M2 10Q6 4.5 10 4.5T18 10Q14 15.5 10 15.5T2 10Z" />
      <circle cx={10} cy={10} r={2.4} />
      {isOn && <path d="M3 17L17 3" />}
    </svg>
  </button>
);

/** A padlock, closed when the thing is kept from being moved. */
export const LockButton = ({ name, isOn, onChange }: RowButtonProps) => (
  <button
    type="button"
    className="row-button"
    aria-label={`Lock ${name}`}
    title={isOn ? 'Locked: press to let it be moved again' : 'Lock'}
    aria-pressed={isOn}
    onClick={() => onChange(!isOn)}
  >
    <svg viewBox="0 0 20 20" width={18} height={18} aria-hidden="true">
      <path d="M4.5 9.5H15.5V17H4.5Z" />
      <path d={isOn ? 'M7 9.5V6.5A3 3 0 0 1 13 6.5V9.5' : 'M7 9.5V5A3 3 0 0 1 12.8 4'} />
    </svg>
  </button>
);
