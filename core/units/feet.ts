/** In what lengths are written for people. */
export type Lengths = 'metres' | 'feet';

/** The international foot and inch, metres (exact by definition, 1959). */
export const footMetres = 0.3048;
export const inchMetres = 0.0254;

/** So many feet as one says them: "0.98", "19.7", "66"; a whole number without a tail: "3". */
const feetFigures = (feet: number): string => {
  const size = Math.abs(feet);
  return String(Number(feet.toFixed(size < 0.995 ? 2 : size < 19.95 ? 1 : 0)));
};

/** A length in feet: "0.98 ft", "3 ft", "19.7 ft", "66 ft". */
export const feetText = (metres: number): string => `${feetFigures(metres / footMetres)} ft`;

/** The length that stands in metres, in feet; to a tenth where that is as near as it was written: "0.30" of a foot is "1". */
const feetOfWritten = (metres: number, decimals: number): string => {
  const feet = metres / footMetres;
  const tenths = Number(feet.toFixed(1));
  const isAsNear = decimals === 2 && tenths !== 0 && Math.abs(tenths - feet) <= 0.005 / footMetres;
  return isAsNear ? feetFigures(tenths) : feetFigures(feet);
};

/** An end of a range of three figures, never outside it: "0.165" and "32800" of 0.164042 and 32808.4. */
export const inwardEnd = (value: number, end: 'least' | 'most'): number => {
  if (value === 0) return 0;
  const step = 10 ** (Math.floor(Math.log10(Math.abs(value))) - 2);
  const steps = value / step;
  return Number(((end === 'least' ? Math.ceil(steps - 1e-6) : Math.floor(steps + 1e-6)) * step).toPrecision(3));
};

const number = String.raw`[-−]?\d[\d,]*(?:\.\d+)?`;
/** "6.0 m", "5 × 0.5 × 2.4 m", "0.8 to 0.5 m/s", "3.15 m²", "28 cm"; not "lm·s", "mm", nor what stands in an identifier. */
const metric = new RegExp(
  String.raw`(?<![\d.:\w])((?:${number}(?: × | to ))*${number})[ \u00a0](m²|m/s|cm|m)(?![\p{L}\d²·/])`,
  'gu',
);

/** What lies between quotation marks is a name that somebody gave. */
const names = /“[^”]*”/g;

const numberOf = (text: string): number => Number(text.replaceAll(',', '').replace('−', '-'));

const inUnit: Readonly<Record<string, (value: number, decimals: number) => readonly [text: string, unit: string]>> = {
  m: (value, decimals) => [feetOfWritten(value, decimals), 'ft'],
  cm: (value) => {
    const inches = value / 100 / inchMetres;
    return [String(Number(inches.toFixed(Math.abs(inches) < 10 ? 1 : 0))), 'in'];
  },
  'm/s': (value) => [(value / footMetres).toFixed(1), 'ft/s'],
  'm²': (value) => [String(Number((value / footMetres ** 2).toPrecision(3))), 'ft²'],
};

const convert = (text: string): string =>
  text.replace(metric, (_, values: string, unit: string) => {
    const to = inUnit[unit] as (value: number, decimals: number) => readonly [string, string];
    const last = to(0, 0)[1];
    const worded = values.replace(new RegExp(number, 'g'), (each) => {
      const [written] = to(numberOf(each), each.split('.')[1]?.length ?? 0);
      return each.startsWith('−') ? written.replace('-', '−') : written;
    });
    return `${worded} ${last}`;
  });

/**
 * A sentence with its lengths, areas and speeds in feet, and centimetres in inches, instead of metres, with digits after their size: 0.98, 19.7, 66.
 * Names stay as they are: those in quotation marks, and that of the one it is about, "Key: …".
 *
 * @param about names that may stand bare at its start, before a colon
 */
export const lengthsInFeet = (text: string, about: readonly string[] = []): string => {
  const named = about.filter((name) => text.startsWith(`${name}:`)).sort((a, b) => b.length - a.length);
  const start = named[0]?.length ?? 0;
  const said = text.slice(start);
  const kept = said.match(names) ?? [];
  const parts = said.split(names).map((part, i) => convert(part) + (kept[i] ?? ''));
  return text.slice(0, start) + parts.join('');
};
