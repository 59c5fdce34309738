import { useEffect, useState } from 'react';
import type { Camera, Setup } from '../../../core/setup/schema/setup.ts';
import { instantOf } from '../../../core/sky/zoned-time.ts';
import { wrapDegrees } from '../../../core/units/angle.ts';
import { useApp } from '../state/app-store.ts';
import { setNorth } from '../state/edits/place-and-hour-edits.ts';
import { NumberField } from '../ui/NumberField.tsx';
import { aimBearing } from './aim-bearing.ts';
import { compassWords } from './compass-words.ts';
import { type MagneticNorth, magneticNorth } from './magnetic.ts';

type Place = Setup['place'];
const bearing = { unit: '°', min: 0, max: 360, digits: 1, wraps: true } as const;

/** What a compass shows there and then; null while it is not known, or the file with the model could not be had. */
const useMagneticNorth = ({ latitudeDegrees, longitudeDegrees, localTime, timeZone }: Place): MagneticNorth | null => {
  const [north, setNorthOf] = useState<MagneticNorth | null>(null);
  // it changes by a tenth of a degree a year: the day is near enough
  const day = localTime.slice(0, 10);
  useEffect(() => {
    let isWanted = true;
    const noon = instantOf(`${day}T12:00`, timeZone);
    const utcMilliseconds = noon.kind === 'instant' ? noon.utcMilliseconds : Date.parse(`${day}T12:00Z`);
    magneticNorth(latitudeDegrees, longitudeDegrees, utcMilliseconds)
      .catch(() => null)
      .then((found) => {
        if (isWanted) setNorthOf(found);
      });
    return () => {
      isWanted = false;
    };
  }, [latitudeDegrees, longitudeDegrees, day, timeZone]);
  return north;
};

/** How the scene lies under the sky: by where the camera looks, true or by compass, or by its own north. */
export const NorthFields = ({ place, camera }: { place: Place; camera: Camera }) => {
  const { edit } = useApp.getState();
  const magnetic = useMagneticNorth(place);
  const looks = aimBearing(camera, place.northDegrees);
  const turnTo = (trueBearing: number) =>
    edit((s) => setNorth(s, wrapDegrees(Number((s.place.northDegrees + trueBearing - looks).toFixed(4)))));
  const declination = magnetic?.kind === 'declination' ? magnetic.declinationDegrees : null;
  return (
    <div className="north-fields">
      <div className="fields two">
        <NumberField label="Camera looks to, true" {...bearing} value={looks} onChange={turnTo} />
        {declination !== null && (
          <NumberField
            label="Camera, by compass"
            {...bearing}
            value={wrapDegrees(looks - declination)}
            onChange={(to) => turnTo(wrapDegrees(to + declination))}
          />
        )}
        <NumberField
          label="Scene’s north, true"
          {...bearing}
          value={place.northDegrees}
          onChange={(to) => edit((s) => setNorth(s, to))}
        />
        {declination !== null && (
          <NumberField
            label="Scene’s north, by compass"
            {...bearing}
            value={wrapDegrees(place.northDegrees - declination)}
            onChange={(to) => edit((s) => setNorth(s, Number(wrapDegrees(to + declination).toFixed(4))))}
          />
        )}
      </div>
      {magnetic && <p className="quiet">{compassWords(magnetic)}</p>}
    </div>
  );
};
