import { useEffect, useRef, useState } from 'react';
import type { Camera, Setup } from '../../../core/setup/schema/setup.ts';
import { toMinute } from '../../../core/sky/clock-at.ts';
import { type CoreNight, coreOver } from '../../../core/sky/core-over.ts';
import type { SkyInput } from '../../../core/sky/sky-input.ts';
import { radiansFromDegrees } from '../../../core/units/angle.ts';
import { useApp } from '../state/app-store.ts';
import { setLocalTime } from '../state/edits/place-and-hour-edits.ts';
import { Check } from '../ui/Check.tsx';
import { NumberField } from '../ui/NumberField.tsx';
import { bearingText } from '../ui/sky-words.ts';
import { aimBearing } from './aim-bearing.ts';
import { standWords } from './core-words.ts';

/** How far ahead is looked, and how many nights are listed. */
const [nightsAhead, mostListed] = [400, 12];

const dayMilliseconds = 86_400_000;

interface Found {
  /** Place, camera and question that the answer is for. */
  readonly key: string;
  /** From when on was looked. */
  readonly fromMilliseconds: number;
  readonly nights: readonly CoreNight[];
}

interface CoreNightsProps {
  readonly setup: Setup;
  readonly camera: Camera;
  readonly input: SkyInput;
}

/** When the core of the Milky Way stands over what the camera looks at: looked for on a press, gone to on another. */
export const CoreNights = ({ setup, camera, input }: CoreNightsProps) => {
  const { place, subjects } = setup;
  const selection = useApp((state) => state.selection);
  const { edit } = useApp.getState();
  const [sideDegrees, setSide] = useState(15);
  const [lowestDegrees, setLowest] = useState(5);
  const [moonDown, setMoonDown] = useState(true);
  const [found, setFound] = useState<Found | null>(null);
  const answer = useRef<HTMLDivElement>(null);
  // near the page's lower end it would open out of sight
  useEffect(() => {
    if (found) answer.current?.scrollIntoView({ block: 'nearest' });
  }, [found]);
  const subject = subjects.find(({ id }) => selection?.kind === 'subject' && selection.subjectId === id);
  const bearing = aimBearing(camera, place.northDegrees, subject?.position);
  const key = [
    place.latitudeDegrees,
    place.longitudeDegrees,
    place.timeZone,
    bearing.toFixed(1),
    sideDegrees,
    lowestDegrees,
    moonDown,
  ].join(' ');
  const look = () => {
    const window = {
      bearingRadians: radiansFromDegrees(bearing),
      toleranceRadians: radiansFromDegrees(sideDegrees),
      lowestRadians: radiansFromDegrees(lowestDegrees),
      highestRadians: Math.PI / 2,
    };
    setFound({
      key,
      fromMilliseconds: input.utcMilliseconds,
      nights: coreOver(input, { window, nights: nightsAhead, moonDown }).slice(0, mostListed),
    });
  };
  const goTo = (utcMilliseconds: number) => {
    const to = toMinute(utcMilliseconds, place.timeZone);
    if (to !== null) edit((s) => setLocalTime(s, to));
  };
  // an hour of one of the nights that were looked through asks nothing new
  const ahead = found ? (input.utcMilliseconds - found.fromMilliseconds) / dayMilliseconds : 0;
  const isOld = found !== null && (found.key !== key || ahead < -1 || ahead > nightsAhead);
  const aim = subject ? subject.name : 'what the camera looks at';
  return (
    <section className="core-nights" aria-label="When the core stands over the subject">
      <div className="core-ask">
        <span>
          Core over {aim}, {bearingText(bearing)}
        </span>
        <NumberField label="to either side" unit="°" value={sideDegrees} min={1} max={90} onChange={setSide} />
        <NumberField label="and at least" unit="° up" value={lowestDegrees} min={0} max={80} onChange={setLowest} />
        <Check label="Moon down" isOn={moonDown} onChange={setMoonDown} />
        <button type="button" onClick={look}>
          Find nights
        </button>
      </div>
      <div ref={answer} role="status">
        {found && !isOld && found.nights.length === 0 && (
          <p>
            Not in the {nightsAhead} nights from here: it never stands there, {lowestDegrees}° up or higher, while it is
            dark. Try wider, or turn the camera.
          </p>
        )}
        {found && !isOld && found.nights.length > 0 && (
          <ul className="core-list">
            {found.nights.flatMap(({ stands }) =>
              stands.map((stand) => (
                <li key={stand.start.utcMilliseconds}>
                  <button
                    type="button"
                    onClick={() => goTo((stand.start.utcMilliseconds + stand.end.utcMilliseconds) / 2)}
                  >
                    {standWords(stand, place.timeZone)}
                  </button>
                </li>
              )),
            )}
          </ul>
        )}
        {isOld && <p className="quiet">The question has changed: find again.</p>}
      </div>
    </section>
  );
};
