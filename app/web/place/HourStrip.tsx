import { useState } from 'react';
import { useSetup } from '../state/app-store.ts';
import { hourOf } from '../state/hour-of-place.ts';
import { shortDate } from './clock-time.ts';
import { shortHourWords } from './hour-rows.ts';
import { HourPanel } from './late-parts.ts';

/** The hour, under the picture: one line that opens to the night. */
export const HourStrip = () => {
  const { place } = useSetup();
  const [isOpen, setIsOpen] = useState(false);
  const hour = hourOf(place);
  const { localTime } = place;
  const words = place.sky === null ? 'plain sky' : hour ? shortHourWords(hour) : 'zone not known here';
  return (
    <section className="hour-strip" aria-label="Hour">
      <button type="button" className="unfold" aria-expanded={isOpen} onClick={() => setIsOpen(!isOpen)}>
        Hour:{' '}
        <strong>
          {shortDate(localTime)}, {localTime.slice(11, 16)}
        </strong>{' '}
        · {words}
      </button>
      {isOpen && <HourPanel />}
    </section>
  );
};
