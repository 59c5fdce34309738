import { footMetres, inchMetres } from '../../../core/units/feet.ts';

/** What may stand behind a number, and what it is worth in the field's own unit. */
const factors: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  m: { m: 1, cm: 0.01, mm: 0.001, km: 1000, ft: footMetres, feet: footMetres, foot: footMetres, in: inchMetres },
  cm: { cm: 1, mm: 0.1, m: 100, ft: 100 * footMetres, in: 100 * inchMetres },
  'm/s': { 'm/s': 1, 'km/h': 1 / 3.6, 'ft/s': footMetres },
  s: { s: 1, sec: 1, min: 60, ms: 0.001 },
  mm: { mm: 1, cm: 10 },
  K: { K: 1, k: 1 },
  '%': { '%': 1 },
  '°': { '°': 1, deg: 1 },
  lm: { lm: 1, lumens: 1, lumen: 1 },
  cd: { cd: 1, candela: 1 },
  lx: { lx: 1, lux: 1 },
};

/**
 * The number a person typed into a field, in the field's unit: "2.8", "f/2.8", "2,8", "1/60", "3 ft", "5'6\"", "6 ft 2 in", "90 cm",
 * "1.5 min", "4:30" minutes. A comma before exactly three digits parts thousands, as boxes print lumens: "1,200" is 1200.
 *
 * @returns null when it can't be read
 */
export const parseQuantity = (text: string, unit: string): number | null => {
  const feet =
    unit === 'm'
      ? /^\s*([-+−]?)(\d+)\s*(?:['’]|ft|feet|foot)\s*(\d+(?:\.\d+)?)?\s*(?:in|inch|inches|["”])?\s*$/i.exec(text)
      : null;
  if (feet) {
    const metres = Number(feet[2]) * footMetres + Number(feet[3] ?? 0) * inchMetres;
    return /[-−]/.test(feet[1] ?? '') ? -metres : metres;
  }
  const minutes = unit === 's' ? /^\s*(\d+):([0-5]\d)\s*$/.exec(text) : null;
  if (minutes) return Number(minutes[1]) * 60 + Number(minutes[2]);
  const match = /^\s*(?:f\s*\/?\s*|iso\s*)?([+-]?\d*[.,]?\d+)(?:\s*\/\s*(\d+(?:[.,]\d+)?))?\s*([a-z°%/]*)\s*$/i.exec(
    text,
  );
  if (!match) return null;
  const number = (digits: string) =>
    Number(/,\d{3}$/.test(digits) ? digits.replace(',', '') : digits.replace(',', '.'));
  const [, digits = '', divisor, suffix = ''] = match;
  const value = number(digits) / (divisor === undefined ? 1 : number(divisor));
  const factor = suffix === '' ? 1 : factors[unit]?.[suffix];
  return factor !== undefined && Number.isFinite(value) ? value * factor : null;
};
