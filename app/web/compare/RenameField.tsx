import { plainName } from '../state/edits/plain-name.ts';

interface RenameFieldProps {
  readonly name: string;
  /** Told the new name, or null when it stays as it was. */
  readonly onDone: (name: string | null) => void;
}

/** A scheme's name while it is typed. Enter takes it, Escape gives the old one back. */
export const RenameField = ({ name, onDone }: RenameFieldProps) => {
  const settle = (text: string) => onDone(plainName(text) || null);
  return (
    <input
      className="text"
      defaultValue={name}
      aria-label="Name of the scheme"
      maxLength={80}
      // biome-ignore lint/a11y/noAutofocus: the user has just asked to type here
      autoFocus
      onFocus={(event) => event.currentTarget.select()}
      onBlur={(event) => settle(event.currentTarget.value)}
      onKeyDown={(event) => {
        if (event.key === 'Enter') settle(event.currentTarget.value);
        if (event.key === 'Escape') onDone(null);
      }}
    />
  );
};
