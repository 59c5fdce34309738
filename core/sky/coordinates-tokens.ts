/** A piece of typed coordinates. */
export type CoordinateToken =
  | {
      readonly kind: 'number';
      readonly value: number;
      readonly text: string;
      readonly sign: -1 | 0 | 1;
      readonly unit: Unit | null;
    }
  | { readonly kind: 'letter'; readonly letter: 'N' | 'S' | 'E' | 'W' }
  /** What parts the two coordinates from each other. */
  | { readonly kind: 'gap' };
type Unit = 'degrees' | 'minutes' | 'seconds';

const units: Readonly<Record<string, Unit>> = { '°': 'degrees', "'": 'minutes', '"': 'seconds' };

/** One way of writing for the many that pages, phones and keyboards have. */
const plainText = (text: string): string =>
  text
    .replace(/[\u2010-\u2015\u2212\u00ad]/g, '-')
    .replace(/''|[\u2033\u201c\u201d\u201f\u02ba\u3003\u301e]|\u2032\u2032/g, '"')
    .replace(/[\u2032\u2018\u2019\u201b\u02b9\u00b4`]/g, "'")
    .replace(/''/g, '"')
    .replace(/[\u00ba\u02da]/g, '°')
    .replace(/^\s*geo:/i, '')
    .replace(/\b(?:latitude|longitude|lat|long|lon|lng)\b\.?\s*[:=]?/gi, ' ')
    .replace(/\b(north|south|east|west)\b/gi, (word) => word.charAt(0))
    .replace(/(\d)\s*deg(?:rees?)?\b/gi, '$1°')
    .replace(/(\d)\s*min(?:utes?)?\b/gi, "$1'")
    .replace(/(\d)\s*sec(?:onds?)?\b/gi, '$1"')
    .replace(/[()[\]{}]/g, ' ')
    .trim();

/**
 * Which commas part two coordinates and which are decimal: a semicolon settles it; else a comma with a figure on both
 * sides is decimal if it must be. Gaps come back as ";", decimal commas as ".". Null where it can be read both ways.
 */
const settleCommas = (text: string): string | null => {
  const decimal = (part: string) => part.replace(/(\d),(\d)/g, '$1.$2');
  const halves = text.split(/\s*;\s*/).filter((half) => half !== '');
  if (text.includes(';')) return halves.map(decimal).join(';');
  const open = /,(?!\d)|(?<!\d),/g;
  if (open.test(text)) return decimal(text.replace(open, ';'));
  const tight = text.match(/\d,\d/g)?.length ?? 0;
  if (tight === 1) return text.replace(',', ';');
  if (tight === 2 && !text.includes('.')) return decimal(text);
  return tight === 0 ? text : null;
};

/**
 * The pieces of two typed coordinates, which a comma may part.
 *
 * @returns null where something is no number, sign, unit or one of N, S, E and W
 */
export const coordinateTokens = (text: string): readonly CoordinateToken[] | null => {
  const settled = settleCommas(plainText(text));
  if (settled === null) return null;
  const pattern = /\s*(?:([+-]?)(\d+(?:\.\d*)?|\.\d+)\s*([°'"])?|([NSEW])(?![A-Za-z])|([;]))/iy;
  const tokens: CoordinateToken[] = [];
  while (pattern.lastIndex < settled.length) {
    const match = pattern.exec(settled);
    if (!match) return null;
    const [, sign = '', number, unit = '', letter] = match;
    if (number !== undefined) {
      const unitOf = units[unit] ?? null;
      const signOf = sign === '-' ? -1 : sign === '+' ? 1 : 0;
      tokens.push({ kind: 'number', value: Number(number), text: number, sign: signOf, unit: unitOf });
    } else if (letter !== undefined) tokens.push({ kind: 'letter', letter: letter.toUpperCase() as 'N' });
    else tokens.push({ kind: 'gap' });
  }
  return tokens;
};
