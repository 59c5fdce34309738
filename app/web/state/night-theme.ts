import { create } from 'zustand';
import { keepText, keptText } from './kept-text.ts';

/** How the page looks: as usual, all in one red, or neutral and dim, for eyes that are used to the dark. */
export type NightTheme = 'usual' | 'red' | 'dim';

const storageKey = 'lampfall night theme';
/** All of them, with the name that is shown. */
export const nightThemes = [
  ['usual', 'Usual'],
  ['red', 'Red'],
  ['dim', 'Dim white'],
] as const satisfies readonly (readonly [NightTheme, string])[];
/** What the frame of a browser or a phone takes on. */
const frameColours: Readonly<Record<NightTheme, string>> = { usual: '#0f1012', red: '#000000', dim: '#000000' };

const kept = (): NightTheme => {
  const text = keptText(storageKey);
  return nightThemes.find(([theme]) => theme === text)?.[0] ?? 'usual';
};

const put = (theme: NightTheme): void => {
  document.documentElement.dataset['theme'] = theme;
  document.querySelector('meta[name=theme-color]')?.setAttribute('content', frameColours[theme]);
};

export const useNightTheme = create<{ readonly theme: NightTheme }>(() => ({ theme: 'usual' }));

/** Takes up the theme that was chosen last; called before anything is drawn. */
export const startNightTheme = (): void => {
  const theme = kept();
  useNightTheme.setState({ theme });
  put(theme);
};

/** Puts the page into another theme and keeps that on this machine. */
export const chooseNightTheme = (theme: NightTheme): void => {
  useNightTheme.setState({ theme });
  put(theme);
  keepText(storageKey, theme);
};
