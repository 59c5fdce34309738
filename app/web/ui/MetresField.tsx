import { NumberField } from './NumberField.tsx';

interface MetresFieldProps {
  readonly label: string;
  readonly value: number;
  readonly onChange: (value: number) => void;
  readonly min?: number;
  readonly max?: number;
  readonly parse?: (text: string) => number | null;
}

/** A length or a coordinate in metres, stepped by 0.1 m. Without limits it takes what the document takes for a height. */
export const MetresField = ({ label, value, onChange, min = -500, max = 2000, parse }: MetresFieldProps) => (
  <NumberField
    label={label}
    unit="m"
    value={value}
    min={min}
    max={max}
    step={0.1}
    onChange={onChange}
    {...(parse ? { parse } : {})}
  />
);
