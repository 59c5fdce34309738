import { bodyHeightWord } from '../../../core/units/body-height.ts';
import { clockText } from '../../../core/units/clock.ts';
import { MetresField } from '../ui/MetresField.tsx';
import { NumberField } from '../ui/NumberField.tsx';
import { parseClock } from '../ui/parse-clock.ts';
import { parseHeight } from '../ui/parse-height.ts';

interface StandFieldsProps {
  readonly clockHours: number;
  readonly levelMetres: number;
  readonly heightMetres: number;
  readonly onStand: (clockHours: number, levelMetres: number) => void;
  readonly onLift: (heightMetres: number) => void;
}

/** Where a lamp is, as one says it: hour, distance on the level, height. */
export const StandFields = ({ clockHours, levelMetres, heightMetres, onStand, onLift }: StandFieldsProps) => (
  <>
    <NumberField
      label="Clock"
      wraps
      unit=""
      value={clockHours}
      min={0}
      max={12}
      step={1 / 6}
      format={clockText}
      parse={parseClock}
      onChange={(hours) => onStand(hours, levelMetres)}
    />
    <MetresField
      label="Level distance"
      value={levelMetres}
      min={0.05}
      onChange={(metres) => onStand(clockHours, metres)}
    />
    <MetresField
      label={`Height · ${bodyHeightWord(heightMetres)}`}
      parse={parseHeight}
      value={heightMetres}
      onChange={onLift}
    />
  </>
);
