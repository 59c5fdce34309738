import type { Lamp } from '../../../core/setup/schema/setup.ts';
import { useApp } from '../state/app-store.ts';
import { measuredBeamOf, restateLampOutput, setLampLux, setLampOutput } from '../state/edits/lamp-edits.ts';
import { numberOfOutput, type Output, type OutputFrom, outputFrom, outputRanges } from '../state/edits/lamp-output.ts';
import { Choice } from '../ui/Choice.tsx';
import { NumberField } from '../ui/NumberField.tsx';

const told: readonly (readonly [OutputFrom, string])[] = [
  ['lumens', 'lumens'],
  ['beam-distance', 'beam distance'],
  ['peak-candela', 'peak candela'],
  ['lux-at-1-metre', 'lux at 1 metre'],
];

const fields: Readonly<Record<OutputFrom, { label: string; unit: string; step: number }>> = {
  lumens: { label: 'Output', unit: 'lm', step: 10 },
  'beam-distance': { label: 'Beam distance', unit: 'm', step: 1 },
  'peak-candela': { label: 'Peak', unit: 'cd', step: 10 },
  'lux-at-1-metre': { label: 'At one metre', unit: 'lx', step: 10 },
};

/** What the box says, and how it says it. */
export const OutputField = ({ lamp }: { lamp: Lamp }) => {
  const { edit } = useApp.getState();
  const { output } = lamp;
  const ways = measuredBeamOf(lamp) ? [...told, ['measured', 'as measured'] as const] : told;
  return (
    <>
      <Choice
        label="The box says"
        value={output.from}
        options={ways}
        onChange={(from) => edit((s) => restateLampOutput(s, lamp.id, from as Output['from']))}
      />
      {output.from !== 'measured' && (
        <NumberField
          {...fields[output.from]}
          {...outputRanges[output.from]}
          value={numberOfOutput(output)}
          onChange={(value) => {
            const told = outputFrom(output.from, value);
            edit((s) => (told.from === 'lux-at-1-metre' ? setLampLux : setLampOutput)(s, lamp.id, told));
          }}
        />
      )}
    </>
  );
};
