import { chooseNightTheme, type NightTheme, nightThemes, useNightTheme } from './state/night-theme.ts';
import { Drop } from './ui/Drop.tsx';

const notes: Readonly<Record<NightTheme, string>> = {
  usual: 'colours as they are',
  red: 'all of it in one red',
  dim: 'half as bright, neutral',
};

/** The night theme of the whole page, pictures too. */
export const NightChoice = () => {
  const theme = useNightTheme((state) => state.theme);
  const present = nightThemes.find(([id]) => id === theme)?.[1];
  return (
    <Drop
      className="drop night-choice"
      label={<span title="Night theme">{theme === 'usual' ? 'Night' : present}</span>}
      listLabel="Night theme"
      closesOnPress
    >
      {nightThemes.map(([id, name]) => (
        <button key={id} type="button" aria-pressed={theme === id} onClick={() => chooseNightTheme(id)}>
          {name} <span className="quiet">{notes[id]}</span>
        </button>
      ))}
    </Drop>
  );
};
