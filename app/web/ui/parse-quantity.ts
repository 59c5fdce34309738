/** What may stand behind a number, and what it is worth in the field's own unit. */
const factors: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  m: { m: 1, cm: 0.01, mm: 0.001, km: 1000, ft: 0.3048, feet: 0.3048, in: 0.0254 },
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
 * The number a person typed into a field, in the field's unit: "2.8", "f/2.8", "2,8", "1/60", "3 ft", "5'6", "90 cm",
 * "1.5 min", "4:30" minutes. A comma before exactly three digits parts thousands, as boxes print lumens: "1,200" is 1200.
 *
 * @returns null when it can't be read
 */
export const parseQuantity = (text: string, unit: string): number | null => {
  const feet = unit === 'm' ? /^\s*(\d+)\s*['’]\s*(\d+(?:\.\d+)?)?\s*["”]?\s*$/.exec(text) : null;
  if (feet) return (Number(feet[1]) + Number(feet[2] ?? 0) / 12) * 0.3048;
  const minutes = unit === 's' ? /^\s*(\d+):([0-5]\d)\s*$/.exec(text) : null;
  if (minutes) return Number(minutes[1]) * 60 + Number(minutes[2]);
  const match = /^\s*(?:f\s*\/?\s*|iso\s*)?([+-]?\d*[.,]?\d+)(?:\s*\/\s*(\d+(?:[.,]\d+)?))?\s*([a-z°%]*)\s*$/i.exec(
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
