import { useEffect, useId, useState } from 'react';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { parseCoordinates } from '../../../core/sky/coordinates.ts';
import { instantOf } from '../../../core/sky/zoned-time.ts';
import { useApp } from '../state/app-store.ts';
import { documentKeyOf } from '../state/document-key.ts';
import { setCoordinates, setTimeZone } from '../state/edits/place-and-hour-edits.ts';
import { type Parsed, ParsedField } from '../ui/ParsedField.tsx';
import { wholeCoordinates } from './coordinates-text.ts';
import { parseZone } from './parse-zone.ts';
import { suggestZone } from './suggest-zone.ts';

type Place = Setup['place'];
type Pair = readonly [latitudeDegrees: number, longitudeDegrees: number];

const parsePair = (text: string): Parsed<Pair> => {
  const parsed = parseCoordinates(text);
  return parsed.kind === 'fault'
    ? { problem: parsed.words }
    : { value: [parsed.latitudeDegrees, parsed.longitudeDegrees] };
};

const suggestFor = async ([latitude, longitude]: Pair): Promise<string | null> => {
  try {
    return await suggestZone(latitude, longitude);
  } catch {
    // the file with the zones is not there, as without a network on the first visit
    return null;
  }
};

/**
 * Moves the place. The zone goes along where it was the one suggested for the place before, or plain UTC; one that was
 * chosen stays.
 */
const moveTo = async (before: Place, pair: Pair): Promise<void> => {
  const document = documentKeyOf(useApp.getState());
  const [old, next] = await Promise.all([
    suggestFor([before.latitudeDegrees, before.longitudeDegrees]),
    suggestFor(pair),
  ]);
  // by now another document may be open
  if (documentKeyOf(useApp.getState()) !== document) return;
  const follows = next !== null && (before.timeZone === old || before.timeZone === 'Etc/UTC');
  useApp.getState().edit((s) => setCoordinates(s, ...pair, follows ? next : s.place.timeZone));
};

const useSuggestion = ({ latitudeDegrees, longitudeDegrees }: Place): string | null => {
  const [suggestion, setSuggestion] = useState<string | null>(null);
  useEffect(() => {
    let isWanted = true;
    setSuggestion(null);
    void suggestFor([latitudeDegrees, longitudeDegrees]).then((zone) => {
      if (isWanted) setSuggestion(zone);
    });
    return () => {
      isWanted = false;
    };
  }, [latitudeDegrees, longitudeDegrees]);
  return suggestion;
};

const zones = () => Intl.supportedValuesOf('timeZone');

/** Coordinates and zone. */
export const WhereFields = ({ place }: { place: Place }) => {
  const { edit } = useApp.getState();
  const list = useId();
  const suggestion = useSuggestion(place);
  const instant = instantOf(place.localTime, place.timeZone);
  const offset = instant.kind === 'instant' ? instant.offset : 'not known here';
  return (
    <>
      <ParsedField
        label="Coordinates"
        text={wholeCoordinates(place)}
        parse={parsePair}
        onChange={(pair) => void moveTo(place, pair)}
        hint="54.4 N 2.6 W, 54° 24′ N 2° 36′ W, or pasted. They are saved in the setup: share no private place."
      />
      <ParsedField
        label={`Zone · ${offset}`}
        text={place.timeZone}
        parse={parseZone}
        list={list}
        onChange={(zone) => edit((s) => setTimeZone(s, zone))}
      />
      <datalist id={list}>
        {zones().map((zone) => (
          <option key={zone} value={zone} />
        ))}
      </datalist>
      {suggestion !== null && suggestion !== place.timeZone && (
        <p className="suggestion">
          <span className="quiet">The coordinates suggest {suggestion}. Near a border, check.</span>
          <button type="button" className="small" onClick={() => edit((s) => setTimeZone(s, suggestion))}>
            Take {suggestion}
          </button>
        </p>
      )}
    </>
  );
};
