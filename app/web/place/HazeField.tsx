import type { Setup } from '../../../core/setup/schema/setup.ts';
import { useApp } from '../state/app-store.ts';
import { setPlace } from '../state/edits/place-and-hour-edits.ts';
import { type Parsed, ParsedField } from '../ui/ParsedField.tsx';
import { visibilityWord } from '../ui/sky-words.ts';

const [nearestKm, farthestKm] = [0.05, 300];

/** "12", "12 km", "800 m", or "clear". */
export const parseVisibility = (text: string): Parsed<number | null> => {
  if (/^\s*(clear|none)?\s*$/i.test(text)) return { value: null };
  const match = /^\s*(\d*[.,]?\d+)\s*(km|m)?\s*$/i.exec(text);
  const km = match ? Number(match[1]?.replace(',', '.')) / (match[2]?.toLowerCase() === 'm' ? 1000 : 1) : Number.NaN;
  return km >= nearestKm && km <= farthestKm
    ? { value: km }
    : { problem: `Type kilometres, ${nearestKm} to ${farthestKm}, or “clear”.` };
};

/** How far one sees; clear where nothing is in the way. */
export const HazeField = ({ place: { hazeVisibilityKm: km } }: { place: Setup['place'] }) => (
  <ParsedField
    label={km === null ? 'One sees' : `One sees · ${visibilityWord(km)}`}
    text={km === null ? 'clear' : `${km} km`}
    parse={parseVisibility}
    onChange={(to) => useApp.getState().edit((s) => setPlace(s, { hazeVisibilityKm: to }))}
  />
);
