interface SearchFieldProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (value: string) => void;
}

/** Words to look for; Escape clears them. */
export const SearchField = ({ label, value, onChange }: SearchFieldProps) => (
  <input
    className="text search"
    type="search"
    aria-label={label}
    placeholder="Find"
    autoComplete="off"
    spellCheck={false}
    maxLength={80}
    value={value}
    onChange={(event) => onChange(event.currentTarget.value)}
    onKeyDown={(event) => {
      if (event.key === 'Escape') onChange('');
    }}
  />
);
