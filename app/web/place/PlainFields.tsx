import type { Setup } from '../../../core/setup/schema/setup.ts';
import { wrapDegrees } from '../../../core/units/angle.ts';
import { useApp } from '../state/app-store.ts';
import { changeMoonlight, changeSkylight, firstMoonlight, setPlace } from '../state/edits/place-and-hour-edits.ts';
import { Check } from '../ui/Check.tsx';
import { NumberField } from '../ui/NumberField.tsx';
import { HazeField } from './HazeField.tsx';

/** A third of a stop. */
const thirdStop = (value: number, way: 1 | -1) => Number((Math.max(value, 0.0001) * 2 ** (way / 3)).toPrecision(3));
const wholeKelvin = { unit: 'K', min: 1667, max: 25_000, step: 100, digits: 0 } as const;

/** Light of a plain sky, as stated: an even sky, and a moon that stands still. */
export const PlainFields = ({ place }: { place: Setup['place'] }) => {
  const { edit } = useApp.getState();
  const { moonlight, skylight, northDegrees } = place;
  return (
    <>
      <div className="fields">
        <NumberField
          label="Sky on level ground"
          unit="lx"
          value={skylight.illuminanceLux}
          min={0}
          max={1000}
          digits={6}
          step={thirdStop}
          onChange={(to) => edit((s) => changeSkylight(s, { illuminanceLux: to }))}
        />
        <NumberField
          label="Colour of the sky"
          {...wholeKelvin}
          value={skylight.temperatureKelvin}
          onChange={(to) => edit((s) => changeSkylight(s, { temperatureKelvin: to }))}
        />
        <HazeField place={place} />
      </div>
      <Check
        label="Moonlight"
        isOn={moonlight !== null}
        onChange={(isOn) => edit((s) => setPlace(s, { moonlight: isOn ? firstMoonlight : null }))}
      />
      {moonlight && (
        <div className="fields">
          <NumberField
            label="Moon’s bearing, true"
            unit="°"
            value={wrapDegrees(moonlight.bearingDegrees + northDegrees)}
            min={0}
            max={360}
            digits={1}
            wraps
            onChange={(to) =>
              edit((s) => changeMoonlight(s, { bearingDegrees: wrapDegrees(to - s.place.northDegrees) }))
            }
          />
          <NumberField
            label="Moon’s height"
            unit="°"
            value={moonlight.altitudeDegrees}
            min={0}
            max={90}
            digits={1}
            onChange={(to) => edit((s) => changeMoonlight(s, { altitudeDegrees: to }))}
          />
          <NumberField
            label="Square to the moon"
            unit="lx"
            value={moonlight.illuminanceLux}
            min={0}
            max={1}
            digits={6}
            step={thirdStop}
            onChange={(to) => edit((s) => changeMoonlight(s, { illuminanceLux: to }))}
          />
          <NumberField
            label="Colour of moonlight"
            {...wholeKelvin}
            value={moonlight.temperatureKelvin}
            onChange={(to) => edit((s) => changeMoonlight(s, { temperatureKelvin: to }))}
          />
        </div>
      )}
    </>
  );
};
