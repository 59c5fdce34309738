import type { Part } from '../../../../core/setup/schema/setup.ts';
import { NumberField } from '../../ui/NumberField.tsx';
import { type PartSpec, shownNumber, withNumber } from './part-specs.ts';
import type { PutPart } from './use-part-edit.ts';

interface SpecFieldsProps {
  readonly specs: readonly PartSpec[];
  readonly part: Part;
  readonly put: PutPart;
}

/** Numbers of a part, as the table of its kind lists them. */
export const SpecFields = ({ specs, part, put }: SpecFieldsProps) => (
  <div className="fields">
    {specs.map((spec) => (
      <NumberField
        key={spec.key}
        label={spec.label}
        unit={spec.unit}
        value={shownNumber(part, spec)}
        min={spec.min}
        max={spec.max}
        step={spec.step}
        digits={spec.digits}
        onChange={(value) => put(withNumber(part, spec, value))}
      />
    ))}
  </div>
);
