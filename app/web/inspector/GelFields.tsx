import { correlatedColourTemperature } from '../../../core/colour/cct.ts';
import { lightThroughGels } from '../../../core/colour/gel.ts';
import type { Frame, Gel } from '../../../core/setup/schema/setup.ts';
import { stopsFromRatio } from '../../../core/units/stops.ts';
import { useApp } from '../state/app-store.ts';
import { maxGels, setPassGels } from '../state/edits/pass-edits.ts';
import type { PassPlace } from '../state/edits/within.ts';
import { cssColourOfLight } from '../ui/light-colour.ts';
import { GelRow } from './GelRow.tsx';

interface GelFieldsProps {
  readonly place: PassPlace;
  readonly gels: readonly Gel[];
  readonly lampKelvin: number;
  readonly whiteBalance: Frame['whiteBalance'];
}

/** Places in the stack. The order does not matter. */
const labels = ['Gel', 'Second', 'Third', 'Fourth', 'Fifth', 'Sixth', 'Seventh', 'Eighth'];

/** Off the white locus by so much in Duv a light is called greenish or pinkish; daylight itself is at 0.003. */
const clearDuv = 0.006;

const resultText = (lampKelvin: number, gels: readonly Gel[]): string => {
  const { chromaticity, transmission } = lightThroughGels(lampKelvin, gels);
  if (transmission === 0) return 'No light gets through';
  const white = correlatedColourTemperature(chromaticity);
  const tint = white && Math.abs(white.duv) > clearDuv ? (white.duv > 0 ? ', greenish' : ', pinkish') : '';
  const colour = white === null ? 'a colour, not a white' : `${Math.round(white.temperatureKelvin)} K${tint}`;
  return `${Math.round(lampKelvin)} K becomes ${colour} · costs ${Math.abs(stopsFromRatio(transmission)).toFixed(1)} stops`;
};

/** The gels of a pass as a stack, and what they make of the lamp's light. */
export const GelFields = ({ place, gels, lampKelvin, whiteBalance }: GelFieldsProps) => {
  const { edit } = useApp.getState();
  const rows = gels.length < maxGels ? [...gels, null] : gels;
  const put = (index: number, gel: Gel | null, run?: string) =>
    edit((s) => setPassGels(s, place, gels.toSpliced(index, 1, ...(gel ? [gel] : []))), run);
  return (
    <div className="gel-stack" role="group" aria-label="Filters, in a stack">
      {rows.map((gel, index) => (
        <GelRow
          key={labels[index]}
          label={labels[index] as string}
          gel={gel}
          onChange={(next, run) => put(index, next, run)}
        />
      ))}
      {gels.length > 0 && (
        <p className="gel-result">
          <svg viewBox="0 0 14 14" width={14} height={14} aria-hidden="true">
            <circle cx={7} cy={7} r={6} fill={cssColourOfLight(lampKelvin, gels, whiteBalance)} />
          </svg>
          {resultText(lampKelvin, gels)}
        </p>
      )}
    </div>
  );
};
