import type { Frame, Lamp, Pass } from '../../../core/setup/schema/setup.ts';
import { useApp, useSetup } from '../state/app-store.ts';
import { setPassCloth, setPassSnoot } from '../state/edits/pass-edits.ts';
import type { PassPlace } from '../state/edits/within.ts';
import { NumberField } from '../ui/NumberField.tsx';
import { parseQuantity } from '../ui/parse-quantity.ts';
import { GelFields } from './GelFields.tsx';
import { PolarPlot } from './PolarPlot.tsx';

interface FrontFieldsProps {
  readonly place: PassPlace;
  readonly frame: Frame;
  readonly pass: Pass;
  readonly lamp: Lamp;
}

/** New cloth spreads most of what it lets through (our choice; no published source). */
const usualSpread = 0.8;

const parseOrNone = (text: string, unit: RegExp): number | null =>
  /^\s*(none)?\s*$/i.test(text) ? 0 : parseQuantity(text.replace(unit, ''), '');
const stopsText = (stops: number) =>
  stops === 0 ? 'none' : `${Number(stops.toFixed(2))} ${stops === 1 ? 'stop' : 'stops'}`;
const snootText = (degrees: number) => (degrees === 0 ? 'none' : `${Number(degrees.toFixed(1))}°`);
const parseSnoot = (text: string) => {
  const degrees = parseOrNone(text, /\s*(°|deg)\s*$/i);
  return degrees !== null && degrees > 0 && degrees < 1 ? null : degrees;
};

/** What hangs in front of a lamp in one pass, and the beam that leaves it. */
export const FrontFields = ({ place, frame, pass, lamp }: FrontFieldsProps) => {
  const files = useSetup().measuredBeams;
  const { edit } = useApp.getState();
  const { cloth } = pass;
  const spreads = lamp.kind !== 'lantern' && lamp.kind !== 'tube';
  const setStops = (stops: number) =>
    edit((s) => setPassCloth(s, place, { stops, spreadShare: cloth?.spreadShare ?? (spreads ? usualSpread : 0) }));
  return (
    <section className="group">
      <h3>In front of it</h3>
      <GelFields place={place} gels={pass.gels} lampKelvin={lamp.temperatureKelvin} whiteBalance={frame.whiteBalance} />
      <div className="fields">
        <NumberField
          label="Cloth"
          unit=""
          value={cloth?.stops ?? 0}
          min={0}
          max={16}
          step={0.5}
          format={stopsText}
          parse={(text) => parseOrNone(text, /\s*stops?\s*$/i)}
          onChange={setStops}
        />
        {cloth && spreads && (
          <NumberField
            label="Cloth spreads"
            unit="%"
            value={cloth.spreadShare * 100}
            min={0}
            max={100}
            step={5}
            digits={1}
            onChange={(percent) => edit((s) => setPassCloth(s, place, { ...cloth, spreadShare: percent / 100 }))}
          />
        )}
        <NumberField
          label="Snoot"
          unit=""
          value={pass.snootDegrees ?? 0}
          min={0}
          max={180}
          step={5}
          format={snootText}
          parse={parseSnoot}
          onChange={(degrees) => edit((s) => setPassSnoot(s, place, degrees > 0 ? degrees : null))}
        />
      </div>
      <PolarPlot lamp={lamp} pass={pass} files={files} />
    </section>
  );
};
