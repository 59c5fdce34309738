import { chooseNightTheme, type NightTheme, useNightTheme } from './state/night-theme.ts';
import { Drop } from './ui/Drop.tsx';

const words: readonly (readonly [NightTheme, string, string])[] = [
  ['usual', 'Usual', 'colours as they are'],
  ['red', 'Red', 'all of it in one red'],
  ['dim', 'Dim white', 'half as bright, neutral'],
];

/** The night theme of the whole page, pictures too. */
export const NightChoice = () => {
  const theme = useNightTheme((state) => state.theme);
  const present = words.find(([id]) => id === theme)?.[1];
  return (
    <Drop
      className="drop night-choice"
      label={<span title="Night theme">{theme === 'usual' ? 'Night' : present}</span>}
      listLabel="Night theme"
      closesOnPress
    >
      {words.map(([id, name, note]) => (
        <button key={id} type="button" aria-pressed={theme === id} onClick={() => chooseNightTheme(id)}>
          {name} <span className="quiet">{note}</span>
        </button>
      ))}
    </Drop>
  );
};
