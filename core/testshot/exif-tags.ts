/** Tags of Exif 2.32 (CIPA DC-008-2019, table 4 and annexes) that a test shot is read by, under their numbers. */
export const exifTagNumbers = {
  orientation: 0x0112,
  dateTime: 0x0132,
  exposureTime: 0x829a,
  fNumber: 0x829d,
  photographicSensitivity: 0x8827,
  standardOutputSensitivity: 0x8831,
  recommendedExposureIndex: 0x8832,
  isoSpeed: 0x8833,
  dateTimeOriginal: 0x9003,
  shutterSpeedValue: 0x9201,
  apertureValue: 0x9202,
  focalLength: 0x920a,
  focalLengthIn35mmFilm: 0xa405,
} as const;

/** A photo's tags as some parser read them: numbers (rationals divided), texts, or lists of them. Nothing is trusted. */
export type ExifTags = { readonly [name in keyof typeof exifTagNumbers]?: unknown };

/** Tags by name from tags by number. */
export const namedTags = (byNumber: Readonly<Record<string, unknown>>): ExifTags =>
  Object.fromEntries(
    Object.entries(exifTagNumbers).flatMap(([name, number]) =>
      byNumber[number] === undefined ? [] : [[name, byNumber[number]]],
    ),
  );

/** A tag's number, or the first of its list; null where there is none. NaN and infinity, as of 0/0 and n/0, are none. */
export const numberOf = (value: unknown): number | null => {
  const first: unknown = Array.isArray(value) || ArrayBuffer.isView(value) ? (value as unknown as unknown[])[0] : value;
  return typeof first === 'number' && Number.isFinite(first) ? first : null;
};
