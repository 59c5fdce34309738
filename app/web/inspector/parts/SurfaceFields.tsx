import type { PartOf } from '../../../../core/setup/schema/setup.ts';
import { Check } from '../../ui/Check.tsx';
import { NumberField } from '../../ui/NumberField.tsx';

type Rough = PartOf<'box'>['rough'];
type Dimples = PartOf<'box'>['dimples'];

const firstRough: NonNullable<Rough> = { heightMetres: 0.05, sizeMetres: 0.4, seed: 1 };
const firstDimples: NonNullable<Dimples> = { count: 12, radiusMetres: 0.06, depthMetres: 0.01, seed: 1 };

const SeedField = ({ seed, onChange }: { seed: number; onChange: (seed: number) => void }) => (
  <NumberField
    label="Variant"
    unit=""
    value={seed}
    min={0}
    max={4294967295}
    digits={0}
    onChange={(value) => onChange(Math.round(value))}
  />
);

interface LengthProps {
  readonly label: string;
  readonly value: number;
  readonly min: number;
  readonly max: number;
  readonly onChange: (value: number) => void;
}
const Length = (props: LengthProps) => <NumberField {...props} unit="m" step={0.01} digits={3} />;

/** An uneven surface, as of rock. */
export const RoughFields = ({ rough, onChange }: { rough: Rough; onChange: (rough: Rough) => void }) => (
  <div className="surface">
    <Check
      label="Uneven"
      note="as rock is"
      isOn={rough !== null}
      onChange={(isOn) => onChange(isOn ? firstRough : null)}
    />
    {rough && (
      <div className="fields">
        <Length
          label="Stands out by"
          value={rough.heightMetres}
          min={0}
          max={20}
          onChange={(heightMetres) => onChange({ ...rough, heightMetres })}
        />
        <Length
          label="Bump to bump"
          value={rough.sizeMetres}
          min={0.01}
          max={200}
          onChange={(sizeMetres) => onChange({ ...rough, sizeMetres })}
        />
        <SeedField seed={rough.seed} onChange={(seed) => onChange({ ...rough, seed })} />
      </div>
    )}
  </div>
);

/** Shallow round hollows. */
export const DimpleFields = ({ dimples, onChange }: { dimples: Dimples; onChange: (dimples: Dimples) => void }) => (
  <div className="surface">
    <Check
      label="Hollows"
      note="shallow and round"
      isOn={dimples !== null}
      onChange={(isOn) => onChange(isOn ? firstDimples : null)}
    />
    {dimples && (
      <div className="fields">
        <NumberField
          label="How many"
          unit=""
          value={dimples.count}
          min={0}
          max={200}
          digits={0}
          onChange={(count) => onChange({ ...dimples, count: Math.round(count) })}
        />
        <Length
          label="Radius of one"
          value={dimples.radiusMetres}
          min={0.005}
          max={5}
          onChange={(radiusMetres) => onChange({ ...dimples, radiusMetres })}
        />
        <Length
          label="Depth of one"
          value={dimples.depthMetres}
          min={0}
          max={1}
          onChange={(depthMetres) => onChange({ ...dimples, depthMetres })}
        />
        <SeedField seed={dimples.seed} onChange={(seed) => onChange({ ...dimples, seed })} />
      </div>
    )}
  </div>
);
