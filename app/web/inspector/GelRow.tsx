import { gelFromColour } from '../../../core/colour/gel-from-colour.ts';
import { gelPresets } from '../../../core/colour/gel-presets.ts';
import type { Gel } from '../../../core/setup/schema/setup.ts';
import { Choice } from '../ui/Choice.tsx';
import { ColourField } from '../ui/ColourField.tsx';
import { NumberField } from '../ui/NumberField.tsx';
import { parseQuantity } from '../ui/parse-quantity.ts';
import { changedGel, chosenGel, kindOfGel } from './gel-kinds.ts';

interface GelRowProps {
  readonly label: string;
  /** null for the empty place behind the last. */
  readonly gel: Gel | null;
  /** Called with null to take it out. */
  readonly onChange: (gel: Gel | null, run?: string) => void;
}

const parseMired = (text: string) => parseQuantity(text.replace(/\s*mireds?\s*$/i, ''), '');

/** One gel of the stack: which, and its numbers where they are not those of a preset. */
export const GelRow = ({ label, gel, onChange }: GelRowProps) => {
  const kind = gel && kindOfGel(gel);
  const own = (which: 'shift' | 'colour', plain: string) => [which, gel && kind === which ? gel.name : plain] as const;
  const options = [
    ['', 'none'] as const,
    ...gelPresets.map(({ name }) => [name, name] as const),
    own('shift', 'free shift'),
    own('colour', 'colour'),
  ];
  const value = gel === null || kind === null ? '' : kind === 'preset' ? gel.name : kind;
  return (
    <div className="gel-row">
      <span className="gel-choice">
        <Choice label={label} value={value} options={options} onChange={(choice) => onChange(chosenGel(choice, gel))} />
        {gel && (
          <button type="button" className="take-out" aria-label={`Take out ${gel.name}`} onClick={() => onChange(null)}>
            ×
          </button>
        )}
      </span>
      {gel && kind === 'shift' && (
        <NumberField
          label="Shift"
          unit="mired"
          value={gel.shiftMired}
          min={-500}
          max={500}
          step={5}
          digits={1}
          parse={parseMired}
          onChange={(shiftMired) => onChange(changedGel(gel, { shiftMired }))}
        />
      )}
      {gel?.colour && kind === 'colour' && (
        <ColourField
          label="Colour code"
          value={gel.colour}
          onChange={(linear, run) => onChange(changedGel(gel, gelFromColour(linear)), run)}
        />
      )}
      {gel && kind !== 'preset' && (
        <NumberField
          label="Lets through"
          unit="%"
          value={gel.transmission * 100}
          min={0}
          max={100}
          step={5}
          digits={1}
          onChange={(percent) => onChange(changedGel(gel, { transmission: percent / 100 }))}
        />
      )}
    </div>
  );
};
