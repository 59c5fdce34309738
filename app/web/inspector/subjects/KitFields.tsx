import { kitNamed } from '../../../../core/kits/all-kits.ts';
import { type KitField, settledValues } from '../../../../core/kits/kit.ts';
import type { Subject } from '../../../../core/setup/schema/setup.ts';
import { useApp } from '../../state/app-store.ts';
import { nextOfKit, retuneKit } from '../../state/edits/kit-edits.ts';
import { Choice } from '../../ui/Choice.tsx';
import { NumberField } from '../../ui/NumberField.tsx';

interface OneFieldProps {
  readonly field: KitField;
  readonly value: number;
  readonly onChange: (value: number) => void;
}

/** One number of a kit, or one choice of words. */
const OneField = ({ field: { label, unit, min, max, step, choices }, value, onChange }: OneFieldProps) => {
  if (choices)
    return (
      <Choice
        label={label}
        value={String(value)}
        options={choices.map((word, place) => [String(place), word] as const)}
        onChange={(place) => onChange(Number(place))}
      />
    );
  const isWhole = unit === '' && Number.isInteger(step);
  return (
    <NumberField
      label={label}
      unit={unit}
      value={value}
      min={min}
      max={max}
      step={step}
      digits={isWhole ? 0 : 3}
      onChange={(typed) => onChange(isWhole ? Math.round(typed) : typed)}
    />
  );
};

/** The few numbers that a subject is made from. */
export const KitFields = ({ subjectId, kit }: { subjectId: string; kit: NonNullable<Subject['kit']> }) => {
  const { edit } = useApp.getState();
  const known = kitNamed(kit.name);
  if (!known)
    return <p className="quiet">Made from a kit that this program does not know; its parts can be changed.</p>;
  const values = settledValues(known, kit.values);
  return (
    <section className="group">
      <h3>Size</h3>
      <div className="fields kit-fields">
        {known.fields.map((field) => (
          <OneField
            key={field.key}
            field={field}
            value={values[field.key] ?? field.initial}
            onChange={(value) => edit((s) => retuneKit(s, subjectId, { values: { [field.key]: value } }))}
          />
        ))}
        <span className="seed">
          <NumberField
            label="Variant"
            unit=""
            value={kit.seed}
            min={0}
            max={4294967295}
            digits={0}
            onChange={(seed) => edit((s) => retuneKit(s, subjectId, { seed: Math.round(seed) }))}
          />
          <button
            type="button"
            title="The same sizes, put together another way"
            onClick={() => edit((s) => nextOfKit(s, subjectId))}
          >
            Another
          </button>
        </span>
      </div>
    </section>
  );
};
