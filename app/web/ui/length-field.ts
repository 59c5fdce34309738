import { footMetres, inwardEnd } from '../../../core/units/feet.ts';
import { pageLengths } from './lengths.ts';
import type { NumberFieldProps } from './number-field-props.ts';
import { parseQuantity } from './parse-quantity.ts';

/** Units of a person who thinks in feet, and what one of them is worth in the field's own. */
const inFeet: Readonly<Record<string, readonly [unit: string, worth: number]>> = {
  m: ['ft', footMetres],
  cm: ['in', 2.54],
  'm/s': ['ft/s', footMetres],
};

/** Numbers alone are of the unit that stands behind them: "8", "-2,5", "1/2". */
const bare = /^[\d\s.,/+\-−]*\d\s*$/;

/** Under this many metres, or centimetres, a field needs finer digits: grooves, gaps, waves. */
const fineUnder = 0.5;

/** Reads a text into the field's own unit; bare numbers count in the unit that is shown. */
export const parseLength = (text: string, unit: string, parse?: (text: string) => number | null): number | null => {
  const shown = pageLengths() === 'feet' ? inFeet[unit]?.[0] : undefined;
  const whole = shown !== undefined && bare.test(text) ? `${text} ${shown}` : text;
  return parse ? parse(whole) : parseQuantity(whole, unit);
};

/** A length as the page writes it, in its own unit: number and unit apart. */
export const shownLength = (value: number, unit: string): readonly [value: number, unit: string] => {
  const found = pageLengths() === 'feet' ? inFeet[unit] : undefined;
  return found ? [value / found[1], found[0]] : [value, unit];
};

/** A field in the lengths of the page: shown, stepped and typed in feet, told to the document in metres. */
export const inPageLengths = (props: NumberFieldProps): NumberFieldProps => {
  const found = pageLengths() === 'feet' ? inFeet[props.unit] : undefined;
  if (!found) return props;
  const [unit, worth] = found;
  const { value, min, max, step = 1, digits = 2, format, parse, onChange } = props;
  const isFine = max < fineUnder;
  return {
    ...props,
    unit,
    value: value / worth,
    min: min / worth,
    max: max / worth,
    ends: [inwardEnd(min / worth, 'least'), inwardEnd(max / worth, 'most')],
    // hundredths of a foot are fine enough, but for what is smaller than one
    digits: isFine ? digits + 2 : Math.abs(value / worth) < 1 ? digits : Math.min(digits, 2),
    // half a foot or so for a tenth of a metre and a bit; a whole one for a whole one
    step:
      typeof step === 'function'
        ? (shown, direction) => step(shown * worth, direction) / worth
        : step >= 1
          ? step
          : step * 2.5,
    onChange: (shown) => onChange(Number((shown * worth).toFixed(6))),
    parse: (text) => {
      const own = parseLength(text, props.unit, parse);
      return own === null ? null : own / worth;
    },
    ...(format
      ? {
          format: (shown: number) => {
            const text = format(shown * worth);
            return Number.isFinite(Number(text)) ? String(Number(shown.toFixed(digits))) : text;
          },
        }
      : {}),
  };
};
