/** In what lengths are written for people. */
export type Lengths = 'metres' | 'feet';

/** The international foot and inch, metres (exact by definition, 1959). */
export const footMetres = 0.3048;
export const inchMetres = 0.0254;

/** A length in feet, as one says it: "0.98 ft", "19.7 ft", "66 ft". */
export const feetText = (metres: number): string => {
  const feet = metres / footMetres;
  const size = Math.abs(feet);
  return `${feet === 0 ? '0' : feet.toFixed(size < 1 ? 2 : size < 20 ? 1 : 0)} ft`;
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

const inUnit: Readonly<Record<string, (value: number) => readonly [text: string, unit: string]>> = {
  m: (value) => [feetText(value).slice(0, -3), 'ft'],
  cm: (value) => {
    const inches = value / 100 / inchMetres;
    return [String(Number(inches.toFixed(Math.abs(inches) < 10 ? 1 : 0))), 'in'];
  },
  'm/s': (value) => [(value / footMetres).toFixed(1), 'ft/s'],
  'm²': (value) => [String(Number((value / footMetres ** 2).toPrecision(3))), 'ft²'],
};

const convert = (text: string): string =>
  text.replace(metric, (_, values: string, unit: string) => {
    const to = inUnit[unit] as (value: number) => readonly [string, string];
    const last = to(0)[1];
    const worded = values.replace(new RegExp(number, 'g'), (each) => {
      const [written] = to(numberOf(each));
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
