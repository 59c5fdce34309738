import { rgbOf } from '../../../core/setup/finish-presets.ts';
import type { Finish } from '../../../core/setup/schema/setup.ts';
import {
  asGrey,
  evenShare,
  glossWord,
  mostEvenShare,
  withColour,
  withEvenShare,
  withTransmittance,
} from '../state/edits/finish-edits.ts';
import { Check } from '../ui/Check.tsx';
import { ColourField } from '../ui/ColourField.tsx';
import { NumberField } from '../ui/NumberField.tsx';

/** Takes a finish as it should be; `run` is set for steps that belong together. */
export type PutFinish = (finish: Finish, run?: string) => void;

interface PercentProps {
  readonly label: string;
  /** 0 to 1. */
  readonly share: number;
  readonly most: number;
  readonly step?: number;
  readonly onChange: (share: number) => void;
}

const Percent = ({ label, share, most, step = 1, onChange }: PercentProps) => (
  <NumberField
    label={label}
    unit="%"
    value={100 * share}
    min={0}
    max={Math.floor(1000 * most) / 10}
    digits={1}
    step={step}
    onChange={(percent) => onChange(percent / 100)}
  />
);

interface FinishNumbersProps {
  readonly finish: Finish;
  readonly onChange: PutFinish;
}

/** The numbers of a finish. */
export const FinishNumbers = ({ finish, onChange }: FinishNumbersProps) => {
  const { gloss, metal, transmittance, refractiveIndex, reflectance } = finish;
  const isGrey = typeof reflectance === 'number';
  return (
    <>
      <div className="fields">
        <Percent
          label="Returns"
          share={evenShare(finish)}
          most={mostEvenShare(finish)}
          onChange={(share) => onChange(withEvenShare(finish, share))}
        />
        {!isGrey && (
          <ColourField
            label="Colour"
            value={[...rgbOf(finish)]}
            onChange={(rgb, run) => onChange(withColour(finish, rgb), run)}
          />
        )}
        <Percent
          label={`Gloss: ${glossWord(gloss)}`}
          share={gloss}
          most={1}
          step={5}
          onChange={(share) => onChange({ ...finish, gloss: share })}
        />
        {gloss > 0 && !metal && (
          <NumberField
            label="Refractive index"
            unit=""
            value={refractiveIndex}
            min={1}
            max={4}
            digits={3}
            step={0.01}
            onChange={(index) => onChange({ ...finish, refractiveIndex: index })}
          />
        )}
        <Percent
          label="Lets through"
          share={transmittance}
          most={1 - Math.max(...rgbOf(finish))}
          step={5}
          onChange={(share) => onChange(withTransmittance(finish, share))}
        />
      </div>
      <Check label="Grey" isOn={isGrey} onChange={(isOn) => onChange(asGrey(finish, isOn))} />
      <Check
        label="Metal"
        note="its sheen has its colour, and nothing is returned evenly"
        isOn={metal}
        onChange={(isOn) => onChange({ ...finish, metal: isOn })}
      />
    </>
  );
};
