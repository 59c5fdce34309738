import { useDeferredValue, useMemo } from 'react';
import type { ReadingName } from '../../../core/readings/about/all-readings.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import type { Night } from '../../../core/sky/night.ts';
import type { Hour } from '../state/hour-of-place.ts';
import { Reading } from '../ui/Reading.tsx';
import { groundLightOf } from './ground-light.ts';
import { type HourRow, hourRows, nightRows } from './hour-rows.ts';

/** What stands behind each row. */
const about = {
  Now: 'twilight',
  Sun: 'sun',
  Dusk: 'twilight',
  Dark: 'twilight',
  Dawn: 'twilight',
  Moon: 'moon',
  'Its phase': 'moon',
  'Dark, no moon': 'moon',
  'Core in the dark': 'core',
  Moonlight: 'moonlight',
  'Its shadows': 'moon-shadows',
  Core: 'core',
  'Sky straight up': 'zenith',
  'Sky on the ground': 'sky-light',
} as const satisfies Record<HourRow[0], ReadingName>;

const Numbers = ({ label, rows }: { label: string; rows: readonly HourRow[] }) => (
  <section aria-label={label}>
    <dl className="numbers">
      {rows.map(([name, words]) => (
        <Reading key={name} about={about[name]} name={name}>
          {words}
        </Reading>
      ))}
    </dl>
  </section>
);

interface HourNumbersProps {
  readonly place: Setup['place'];
  readonly hour: Hour;
  readonly night: Night;
}

/** The night's numbers, and the hour's. */
export const HourNumbers = ({ place, hour, night }: HourNumbersProps) => {
  const { timeZone } = place;
  // takes some milliseconds: a hand that drags does not wait for it
  const calm = useDeferredValue(place);
  const ofNight = useMemo(() => nightRows(night, timeZone), [night, timeZone]);
  return (
    <div className="hour-numbers">
      <Numbers label="This night" rows={ofNight} />
      <Numbers label="At that hour" rows={hourRows(hour, calm.sky ? groundLightOf(calm) : null)} />
    </div>
  );
};
