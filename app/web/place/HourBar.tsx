import type { Setup } from '../../../core/setup/schema/setup.ts';
import { instantOf } from '../../../core/sky/zoned-time.ts';
import { useApp } from '../state/app-store.ts';
import { setLocalTime } from '../state/edits/place-and-hour-edits.ts';
import { ParsedField } from '../ui/ParsedField.tsx';
import { daysOn, minutesOn, timeInNight, weekday } from './clock-time.ts';
import { parseDate, parseTime } from './parse-when.ts';

const goTo = (localTime: string | null, run?: string) => {
  if (localTime !== null) useApp.getState().edit((setup) => setLocalTime(setup, localTime), run);
};

/** What the clocks of the place say to the time, where that is not plain. */
const noteWords = {
  once: '',
  skipped: ' · the clocks skip this time',
  twice: ' · the clocks show this time twice: the first is meant',
} as const;

/** Date and time as fields, the nights before and after, and the zone that the clock goes by. */
export const HourBar = ({ place }: { place: Setup['place'] }) => {
  const { localTime, timeZone } = place;
  const { select } = useApp.getState();
  const instant = instantOf(localTime, timeZone);
  const [date, time] = [localTime.slice(0, 10), localTime.slice(11, 16)];
  const openPlace = () => {
    select({ kind: 'place' });
    // once the strip is open
    requestAnimationFrame(() => document.getElementById('place')?.scrollIntoView({ block: 'nearest' }));
  };
  return (
    <div className="hour-bar">
      <button type="button" onClick={() => goTo(daysOn(localTime, -1), 'night')}>
        ‹ Night before
      </button>
      <ParsedField
        label={`Date · ${weekday(date)}`}
        text={date}
        parse={(typed) => parseDate(typed, Number(date.slice(0, 4)))}
        onChange={(to) => goTo(`${to}T${time}`)}
        onStep={(way, isLarge) => goTo(daysOn(localTime, way * (isLarge ? 10 : 1)), 'date')}
      />
      <button type="button" onClick={() => goTo(daysOn(localTime, 1), 'night')}>
        Night after ›
      </button>
      <ParsedField
        label="Time"
        text={time}
        parse={parseTime}
        onChange={(to) => goTo(timeInNight(localTime, to))}
        onStep={(way, isLarge) => goTo(minutesOn(localTime, timeZone, way * (isLarge ? 10 : 1)), 'hour')}
      />
      <span className="quiet">
        {instant.kind === 'instant' ? `${instant.offset} ${timeZone}${noteWords[instant.note]}` : timeZone}
      </span>
      <button type="button" className="small" onClick={openPlace}>
        Place
      </button>
    </div>
  );
};
