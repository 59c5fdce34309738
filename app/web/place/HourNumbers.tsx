import { useDeferredValue, useMemo } from 'react';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import type { Night } from '../../../core/sky/night.ts';
import type { Hour } from '../state/hour-of-place.ts';
import { groundLightOf } from './ground-light.ts';
import { type HourRow, hourRows, nightRows } from './hour-rows.ts';

const Numbers = ({ label, rows }: { label: string; rows: readonly HourRow[] }) => (
  <section aria-label={label}>
    <dl className="numbers">
      {rows.map(([name, words]) => (
        <div className="row" key={name}>
          <dt>{name}</dt>
          <dd>{words}</dd>
        </div>
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
