import { readTilt } from './lamp-tilt.ts';
import { readHorizontalAngles, readVerticalAngles } from './lm63-angles.ts';
import { Lm63Error } from './lm63-error.ts';
import { readHead } from './lm63-head.ts';
import { lm63Name } from './lm63-name.ts';
import { Lm63Reader } from './lm63-reader.ts';
import type { LuminousOpening, PhotometricFile } from './photometric-file.ts';

/** Longest file that is read. A million values of some ten characters fit. */
export const maxLm63Characters = 16_000_000;
const maxAngles = 4000;
const maxValues = 1_000_000;
/** Far above any searchlight, and low enough that no sum of a file overflows. */
const maxCandela = 1e12;
const maxFactor = 1e6;
const metresPerFoot = 0.3048;

/**
 * Reads a photometric file: LM-63 of 1986, 1991, 1995, 2002 or 2019, type C photometry.
 *
 * True candela are value x multiplier x ballast factor. The number between ballast factor and watts is read and not used:
 * in files up to 1995 it is the ballast-lamp photometric factor, in 2002 it is reserved, in 2019 it tells how the file
 * was made. It is 1 in nearly all older files.
 *
 * Limits: 16 million characters, 4,000 angles each way, a million values, 1e12 cd; counts are checked before anything
 * is set aside for them. Sizes in feet become metres.
 *
 * @throws Lm63Error naming the line and what was expected there; nothing else. Also for types A and B, and for tilt
 * factors that lie in another file.
 */
export const parseLm63 = (text: string): PhotometricFile => {
  if (text.length > maxLm63Characters)
    throw new Lm63Error(1, `must begin a file of at most ${maxLm63Characters / 1e6} million characters`);
  const reader = new Lm63Reader(text);
  const { version, keywords, hasTilt } = readHead(reader);
  const tilt = hasTilt ? readTilt(reader) : null;
  const lampCount = reader.number('the number of lamps, a whole number from 1', (n) => Number.isInteger(n) && n >= 1);
  const lumens = reader.number('the lumens per lamp, above 0, or -1 for absolute', (n) => n > 0 || n === -1);
  const multiplier = readFactor(reader, 'the candela multiplier');
  const verticalCount = readCount(reader, 'vertical', 2, maxAngles);
  const horizontalCount = readCount(
    reader,
    'horizontal',
    1,
    Math.min(maxAngles, Math.floor(maxValues / verticalCount)),
  );
  readType(reader);
  const opening = readOpening(reader);
  const ballast = readFactor(reader, 'the ballast factor');
  reader.number('the number between ballast factor and watts');
  const watts = reader.number('the input watts, 0 or more', (n) => n >= 0);
  const verticalDegrees = readVerticalAngles(reader, verticalCount);
  const horizontalDegrees = readHorizontalAngles(reader, horizontalCount);
  const candela = horizontalDegrees.map(() => readRow(reader, verticalCount, multiplier * ballast));
  reader.end(`the last of the ${verticalCount * horizontalCount} candela values`);
  const lumensPerLamp = lumens === -1 ? null : lumens;
  const name = lm63Name(keywords);
  return {
    ...{ version, keywords, name, lampCount, lumensPerLamp, verticalDegrees, horizontalDegrees },
    ...{ candela, opening, watts, tilt },
  };
};

const readCount = (reader: Lm63Reader, way: string, least: number, most: number): number =>
  reader.number(
    `the number of ${way} angles, a whole number from ${least} to ${most} (at most ${maxValues} values in all)`,
    (n) => Number.isInteger(n) && n >= least && n <= most,
  );

const readFactor = (reader: Lm63Reader, name: string): number =>
  reader.number(`${name}, above 0 and at most ${maxFactor}`, (n) => n > 0 && n <= maxFactor);

/** Types A and B measure their angles round other axes: read as type C, they would put the light in the wrong place. */
const readType = (reader: Lm63Reader): void => {
  const type = reader.number('the photometric type: 1 for C, 2 for B or 3 for A', (n) => n === 1 || n === 2 || n === 3);
  if (type === 2)
    throw reader.fault('must be 1 (type C); this is type B, as of floodlights, with angles about a level axis');
  if (type === 3)
    throw reader.fault('must be 1 (type C); this is type A, as of vehicle lamps, with angles counted from the horizon');
};

const readOpening = (reader: Lm63Reader): LuminousOpening => {
  const units = reader.number('the unit of sizes: 1 for feet or 2 for metres', (n) => n === 1 || n === 2);
  const metres = units === 1 ? metresPerFoot : 1;
  const [width, length, height] = ['width', 'length', 'height'].map(
    (side) => metres * reader.number(`the ${side} of the luminous opening, within 1000`, (n) => Math.abs(n) <= 1000),
  ) as [number, number, number];
  const isRound = width < 0 || length < 0 || height < 0;
  // editions up to 1995 give a flat disc by one diameter alone (from memory)
  const diameter = isRound && height === 0 && width * length === 0 ? Math.abs(width + length) : 0;
  return {
    widthMetres: diameter || Math.abs(width),
    lengthMetres: diameter || Math.abs(length),
    heightMetres: Math.abs(height),
    isRound,
  };
};

const readRow = (reader: Lm63Reader, count: number, factor: number): number[] => {
  const isGood = (value: number): boolean => value >= 0 && value * factor <= maxCandela;
  const row: number[] = [];
  for (let k = 0; k < count; k++)
    row.push(reader.number('a candela value, from 0 to 1e12 once multiplied', isGood) * factor);
  return row;
};
