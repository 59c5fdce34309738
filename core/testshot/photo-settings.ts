import { type ExifTags, numberOf } from './exif-tags.ts';

/** What a photo says of how it was taken; null where it says nothing that can be used. */
export interface PhotoSettings {
  readonly seconds: number | null;
  /** F-number as marked. */
  readonly aperture: number | null;
  readonly iso: number | null;
  readonly focalLengthMm: number | null;
  /** What gives the same field of view on a picture 36 mm wide (Exif 2.32, tag 0xA405); most phones say it. */
  readonly focalLength35Mm: number | null;
  /** The camera's own clock when the shutter opened, "YYYY-MM-DDTHH:MM:SS". */
  readonly at: string | null;
  /** How the picture lies in the file, 1 to 8; 1 = upright. */
  readonly orientation: number;
  /** What was missing or odd, a sentence each. */
  readonly notes: readonly string[];
}

/** What frames take: see the schema. */
const ranges = {
  seconds: [1 / 8000, 36000],
  aperture: [0.7, 64],
  iso: [25, 409600],
  focalLengthMm: [1, 2000],
} as const;
type Setting = keyof typeof ranges;

const settingWords: Readonly<Record<Setting, readonly [name: string, unit: string]>> = {
  seconds: ['exposure time', ' s'],
  aperture: ['aperture', ''],
  iso: ['ISO speed', ''],
  focalLengthMm: ['focal length', ' mm'],
};

/** Speed that stands for “more than fits into 16 bits”; the real one is in a tag of its own. */
const isoOverflow = 65535;

/** Where each setting is looked for, best first, and how a value becomes one (APEX: Exif 2.32, annex C). */
const sources: Readonly<Record<Setting, readonly (readonly [keyof ExifTags, (value: number) => number])[]>> = {
  seconds: [
    ['exposureTime', (v) => v],
    ['shutterSpeedValue', (apex) => 2 ** -apex],
  ],
  aperture: [
    ['fNumber', (v) => v],
    ['apertureValue', (apex) => 2 ** (apex / 2)],
  ],
  iso: [
    ['photographicSensitivity', (v) => (v === isoOverflow ? Number.NaN : v)],
    ['standardOutputSensitivity', (v) => v],
    ['recommendedExposureIndex', (v) => v],
    ['isoSpeed', (v) => v],
  ],
  focalLengthMm: [['focalLength', (v) => v]],
};

const isWithin = (value: number, [low, high]: readonly [number, number]): boolean =>
  value >= low * (1 - 1e-9) && value <= high;

/** Without the tail that thirds of stops and rationals have: 0.016666667, 5.6. */
const tidy = (value: number): number => Number(value.toPrecision(9));

const readSetting = (tags: ExifTags, setting: Setting, notes: string[]): number | null => {
  const [name, unit] = settingWords[setting];
  let odd: string | null = null;
  for (const [tag, convert] of sources[setting]) {
    if (tags[tag] === undefined) continue;
    const given = numberOf(tags[tag]);
    const value = given === null ? Number.NaN : convert(given);
    if (isWithin(value, ranges[setting])) return tidy(value);
    odd ??= Number.isFinite(value) ? `${Number(value.toPrecision(4))}${unit}` : 'no number';
  }
  const end = setting === 'focalLengthMm' ? 'That of the setup stays.' : 'The frame keeps its own.';
  notes.push(odd === null ? `The photo does not say its ${name}. ${end}` : `Its ${name} is odd (${odd}). ${end}`);
  return null;
};

/** A date of Exif, "YYYY:MM:DD HH:MM:SS", as the document writes it; null where it is no date (blank, all noughts). */
export const dateOfExif = (text: unknown): string | null => {
  const match = typeof text === 'string' ? /^(\d{4}):(\d\d):(\d\d) (\d\d):(\d\d):(\d\d)/.exec(text) : null;
  if (!match) return null;
  const [, year, month, day, hour, minute, second] = match as unknown as string[];
  const iso = `${year}-${month}-${day}T${hour}:${minute}:${second}`;
  const date = new Date(`${iso}Z`);
  return Number(year) > 0 && !Number.isNaN(date.getTime()) && date.toISOString().startsWith(iso) ? iso : null;
};

/**
 * What a photo's tags say of its exposure, each within what a frame takes. The first tag of a setting that makes sense
 * counts; 0/0, n/0, negative, missing and absurd values are put in words and left out.
 */
export const photoSettings = (tags: ExifTags): PhotoSettings => {
  const notes: string[] = [];
  const [seconds, aperture, iso, focalLengthMm] = (['seconds', 'aperture', 'iso', 'focalLengthMm'] as const).map(
    (setting) => readSetting(tags, setting, notes),
  ) as [number | null, number | null, number | null, number | null];
  const at = dateOfExif(tags.dateTimeOriginal) ?? dateOfExif(tags.dateTime);
  if (at === null) notes.push('The photo does not say when it was taken.');
  const turned = tags.orientation === undefined ? 1 : numberOf(tags.orientation);
  const equivalent = numberOf(tags.focalLengthIn35mmFilm);
  // 0 = not known (Exif 2.32, 4.6.5)
  const focalLength35Mm = equivalent !== null && isWithin(equivalent, ranges.focalLengthMm) ? equivalent : null;
  const isKnown = turned !== null && Number.isInteger(turned) && turned >= 1 && turned <= 8;
  if (!isKnown) notes.push('How it was held is odd; it is shown as it lies in the file.');
  const orientation = isKnown ? (turned as number) : 1;
  return { seconds, aperture, iso, focalLengthMm, focalLength35Mm, at, orientation, notes };
};
