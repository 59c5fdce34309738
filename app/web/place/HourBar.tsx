import { type ChangeEvent, type FocusEvent, useId, useState } from 'react';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { instantOf } from '../../../core/sky/zoned-time.ts';
import { useApp } from '../state/app-store.ts';
import { setLocalTime } from '../state/edits/place-and-hour-edits.ts';
import { daysOn } from './clock-time.ts';

const goTo = (localTime: string | null, run?: string) => {
  if (localTime !== null) useApp.getState().edit((setup) => setLocalTime(setup, localTime), run);
};

interface NativeFieldProps {
  readonly label: string;
  readonly type: 'date' | 'time';
  readonly value: string;
  readonly onChange: (value: string) => void;
  /** Whether a value is whole: a year is typed digit by digit. */
  readonly isWhole: (value: string) => boolean;
}

/** A date or a time of the browser's own kind: typed, stepped, or chosen by thumb. */
const NativeField = ({ label, type, value, onChange, isWhole }: NativeFieldProps) => {
  const id = useId();
  const [draft, setDraft] = useState<string | null>(null);
  const onTyped = ({ currentTarget }: ChangeEvent<HTMLInputElement>) => {
    const typed = currentTarget.value;
    if (typed === '' || !isWhole(typed)) return setDraft(typed);
    setDraft(null);
    if (typed !== value) onChange(typed);
  };
  const onBlur = (_event: FocusEvent) => setDraft(null);
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <input id={id} className="text" type={type} value={draft ?? value} onChange={onTyped} onBlur={onBlur} required />
    </div>
  );
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
      <NativeField
        label="Date"
        type="date"
        value={date}
        isWhole={(typed) => Number(typed.slice(0, 4)) >= 1900 && typed.length === 10}
        onChange={(typed) => goTo(`${typed}T${time}`, 'date')}
      />
      <button type="button" onClick={() => goTo(daysOn(localTime, 1), 'night')}>
        Night after ›
      </button>
      <NativeField
        label="Time"
        type="time"
        value={time}
        isWhole={(typed) => typed.length >= 5}
        onChange={(typed) => goTo(`${date}T${typed.slice(0, 5)}`, 'time')}
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
