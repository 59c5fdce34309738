import { useMemo } from 'react';
import type { Night } from '../../../core/sky/night.ts';
import type { Hour } from '../state/hour-of-place.ts';
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

/** The night's numbers, and the hour's. */
export const HourNumbers = ({ hour, night, timeZone }: { hour: Hour; night: Night; timeZone: string }) => {
  const ofNight = useMemo(() => nightRows(night, timeZone), [night, timeZone]);
  return (
    <div className="hour-numbers">
      <Numbers label="This night" rows={ofNight} />
      <Numbers label="At that hour" rows={hourRows(hour)} />
    </div>
  );
};
