import { describe, expect, it } from 'vitest';
import { photoSettings } from '../../../core/testshot/photo-settings.ts';

describe('photoSettings, focal length as on 35 mm film', () => {
  const of = (focalLengthIn35mmFilm?: number) =>
    photoSettings(focalLengthIn35mmFilm === undefined ? {} : { focalLengthIn35mmFilm }).focalLength35Mm;

  it('is taken as the photo has it', () => {
    expect(of(28)).toBe(28);
  });

  // Exif 2.32, 4.6.5: 0 means that it is not known
  it('is not known where the photo says nought, nothing, or what no lens has', () => {
    expect([of(0), of(), of(-50), of(60_000)]).toEqual([null, null, null, null]);
  });
});
