import type { Setup } from '../../../core/setup/schema/setup.ts';
import { useApp } from '../state/app-store.ts';
import { setPlace } from '../state/edits/place-and-hour-edits.ts';
import { ParsedField } from '../ui/ParsedField.tsx';
import { visibilityWord } from '../ui/sky-words.ts';
import { parseVisibility } from './parse-visibility.ts';

/** How far one sees; clear where nothing is in the way. */
export const HazeField = ({ place: { hazeVisibilityKm: km } }: { place: Setup['place'] }) => (
  <ParsedField
    label={km === null ? 'One sees' : `One sees · ${visibilityWord(km)}`}
    text={km === null ? 'clear' : `${km} km`}
    parse={parseVisibility}
    onChange={(to) => useApp.getState().edit((s) => setPlace(s, { hazeVisibilityKm: to }))}
  />
);
