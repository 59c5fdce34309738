import { nightOf } from '../../../core/sky/night-of.ts';
import { useScheme, useSetup } from '../state/app-store.ts';
import { cameraOf } from '../state/edits/place-edits.ts';
import { hourOf } from '../state/hour-of-place.ts';
import { CoreNights } from './CoreNights.tsx';
import { HourBar } from './HourBar.tsx';
import { HourNumbers } from './HourNumbers.tsx';
import { hourWords } from './hour-rows.ts';
import { takeHourSky } from './light-switch.ts';
import { NightScrubber } from './NightScrubber.tsx';
import { SkyWheel } from './SkyWheel.tsx';

/** The picture keeps its plain light until it is given the sky. */
const PlainNote = () => (
  <p className="hour-note">
    <span>The picture has a plain sky: its light does not follow the hour.</span>
    <button type="button" className="small" onClick={takeHourSky}>
      Use the sky of that hour
    </button>
  </p>
);

/** The night with its hour: set, dragged through, read, and looked for. */
export const HourPanel = () => {
  const setup = useSetup();
  const scheme = useScheme();
  const { place } = setup;
  const camera = cameraOf(setup, scheme.id);
  const hour = hourOf(place);
  const night = hour && nightOf(hour.sky.input);
  const words = hour ? hourWords(hour) : '';
  return (
    <div className="hour-panel">
      <HourBar place={place} />
      {place.sky === null && <PlainNote />}
      {hour && night ? (
        <>
          <div className="hour-night">
            <NightScrubber place={place} night={night} utcMilliseconds={hour.sky.input.utcMilliseconds} words={words} />
            <HourNumbers place={place} hour={hour} night={night} />
          </div>
          <SkyWheel place={place} camera={camera} hour={hour} words={words} />
          <CoreNights setup={setup} camera={camera} input={hour.sky.input} />
        </>
      ) : (
        <p className="quiet">This browser does not know the zone “{place.timeZone}”. Set another under Place.</p>
      )}
    </div>
  );
};
