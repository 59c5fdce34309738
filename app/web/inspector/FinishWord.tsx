import { useId } from 'react';
import type { FinishGroup, FinishPreset } from '../../../core/setup/finish-presets.ts';

interface FinishWordProps {
  /** Id of a preset, "inherited", or "own" for numbers that are no preset's. */
  readonly value: string;
  readonly inheritsLabel: string | null;
  readonly groups: readonly (readonly [FinishGroup, readonly FinishPreset[]])[];
  readonly onChange: (value: string) => void;
}

/** A finish chosen by a plain word. */
export const FinishWord = ({ value, inheritsLabel, groups, onChange }: FinishWordProps) => {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>Finish</label>
      <select id={id} value={value} onChange={(event) => onChange(event.currentTarget.value)}>
        {inheritsLabel !== null && <option value="inherited">{inheritsLabel}</option>}
        {value === 'own' && <option value="own">Own numbers</option>}
        {groups.map(([group, presets]) => (
          <optgroup key={group} label={group}>
            {presets.map((preset) => (
              <option key={preset.id} value={preset.id}>
                {preset.label}
              </option>
            ))}
          </optgroup>
        ))}
      </select>
    </div>
  );
};
