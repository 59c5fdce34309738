import piexif from 'piexifjs';
import { describe, expect, it } from 'vitest';
import { maxPhotoBytes, PhotoRefused, readPhoto } from '../../../../app/web/photo/read-photo.ts';
import { dateOfExif, photoSettings } from '../../../../core/testshot/photo-settings.ts';
import { exposureTags, jpegOf } from './test-photo.ts';

/** JPEGs by an independent encoder (jpeg-js), tags by an independent writer (piexifjs), read by a third (exifr). */

const grey = new Uint8Array(16 * 8 * 3).fill(90);
const photo = (exif: Parameters<typeof jpegOf>[3]): Blob => new Blob([new Uint8Array(jpegOf(grey, 16, 8, exif))]);
const { ExifIFD, ImageIFD } = piexif;
const read = (tags: Record<number, unknown>, main: Record<number, unknown> = {}) =>
  readPhoto(photo({ '0th': main, Exif: tags }));
const date = '2026-10-09T22:41:07';

describe('readPhoto of tags by an independent writer', () => {
  it.each([
    [15, 2.8, 3200],
    [1 / 60, 5.6, 100],
    [30, 8, 51200],
    [1 / 8000, 1.4, 64],
    [240, 11, 400],
  ])('%f s, f/%f, ISO %i come back', async (seconds, aperture, iso) => {
    const settings = await readPhoto(photo({ Exif: exposureTags(seconds, aperture, iso) }));
    expect(settings).toMatchObject({ aperture, iso, focalLengthMm: 24, at: date, orientation: 1, notes: [] });
    expect(Math.abs((settings.seconds as number) / seconds - 1)).toBeLessThan(1e-8);
  });

  it.each([1, 2, 3, 4, 5, 6, 7, 8])('orientation %i', async (orientation) => {
    expect((await read({}, { [ImageIFD.Orientation]: orientation })).orientation).toBe(orientation);
  });

  it.each([0, 9, 255])('orientation %i is odd: shown as it lies in the file, and said', async (orientation) => {
    const settings = await read({}, { [ImageIFD.Orientation]: orientation });
    expect(settings.orientation).toBe(1);
    expect(settings.notes.join()).toMatch(/How it was held is odd/);
  });

  it.each([
    ['0/0', [0, 0]],
    ['5/0', [5, 0]],
    ['0/1', [0, 1]],
    ['4294967295/1', [4294967295, 1]],
    ['1/4294967295', [1, 4294967295]],
  ])('an exposure time of %s is said to be odd and not taken', async (_, rational) => {
    const settings = await read({ ...exposureTags(1, 8, 400), [ExifIFD.ExposureTime]: rational });
    expect(settings).toMatchObject({ seconds: null, aperture: 8, iso: 400 });
    expect(settings.notes.join()).toMatch(/exposure time is odd/);
  });

  it('takes APEX where time and aperture are missing or odd: Tv -4 is 16 s, Av 3 is f/2.83 (Exif 2.32, annex C)', async () => {
    const settings = await read({
      [ExifIFD.ExposureTime]: [0, 0],
      [ExifIFD.ShutterSpeedValue]: [-4, 1],
      [ExifIFD.ApertureValue]: [3, 1],
      [ExifIFD.ISOSpeedRatings]: 800,
    });
    expect(settings).toMatchObject({ seconds: 16, iso: 800 });
    expect(settings.aperture).toBeCloseTo(2 ** 1.5, 6);
  });

  it('says each thing that is missing, and takes nothing for it', async () => {
    for (const file of [photo(null), photo({ Exif: {} })]) {
      const settings = await readPhoto(file);
      expect(settings).toMatchObject({ seconds: null, aperture: null, iso: null, focalLengthMm: null, at: null });
      for (const word of ['exposure time', 'aperture', 'ISO speed', 'focal length', 'when it was taken'])
        expect(settings.notes.join()).toContain(word);
    }
  });

  it('dates that are none are left out: blank, all noughts, 31 February; else the second date counts', async () => {
    for (const text of ['    :  :     :  :  ', '0000:00:00 00:00:00', '2026:02:31 10:00:00', 'yesterday'])
      expect((await read({ [ExifIFD.DateTimeOriginal]: text })).at).toBeNull();
    const settings = await read(
      { [ExifIFD.DateTimeOriginal]: '0000:00:00 00:00:00' },
      { [ImageIFD.DateTime]: '2026:10:09 22:41:07' },
    );
    expect(settings.at).toBe(date);
    expect(dateOfExif('2024:02:29 23:59:59')).toBe('2024-02-29T23:59:59');
  });
});

describe('photoSettings of values that no file should hold', () => {
  it.each([
    [{ exposureTime: -1 }, 'seconds'],
    [{ exposureTime: Number.POSITIVE_INFINITY }, 'seconds'],
    [{ exposureTime: 'long' }, 'seconds'],
    [{ fNumber: 0 }, 'aperture'],
    [{ fNumber: 1e9 }, 'aperture'],
    [{ photographicSensitivity: [] }, 'iso'],
    [{ photographicSensitivity: -400 }, 'iso'],
    [{ focalLength: new Uint8Array() }, 'focalLengthMm'],
  ] as const)('%j', (tags, setting) => {
    const settings = photoSettings(tags);
    expect(settings[setting]).toBeNull();
    expect(settings.notes.join()).toMatch(/ is odd/);
  });

  it('an ISO of 65535 stands for a larger one, which is in a tag of its own (Exif 2.32, 4.6.5)', () => {
    expect(photoSettings({ photographicSensitivity: 65535, standardOutputSensitivity: 102400 }).iso).toBe(102400);
    expect(photoSettings({ photographicSensitivity: 65535 }).iso).toBeNull();
    expect(photoSettings({ photographicSensitivity: new Uint16Array([1600, 0]) }).iso).toBe(1600);
  });
});

describe('readPhoto of other files', () => {
  const blob = (...bytes: (number | string)[]) =>
    new Blob([...bytes.map((part) => (typeof part === 'number' ? new Uint8Array([part]) : part)), new Uint8Array(64)]);
  it.each([
    ['raw (TIFF, little end first)', blob('II*', 0), /raw file.*converter/],
    ['raw (TIFF, big end first)', blob('MM', 0, '*'), /raw file/],
    ['raw in boxes', blob(0, 0, 0, 24, 'ftypcrx '), /raw file/],
    ['HEIC', blob(0, 0, 0, 24, 'ftypheic'), /HEIC/],
    ['PNG', blob(0x89, 'PNG'), /PNG/],
    ['WebP', blob('RIFF', 0, 0, 0, 0, 'WEBP'), /WebP/],
    ['words', blob('dear aunt'), /not a photo.*JPEG that the camera made/],
    ['nothing', new Blob([]), /not a photo.*JPEG that the camera made/],
  ])('%s is refused in words', async (_, file, words) => {
    const error = await readPhoto(file).catch((thrown: unknown) => thrown);
    expect(error).toBeInstanceOf(PhotoRefused);
    expect((error as Error).message).toMatch(words);
  });

  it('a file too large, and a picture too large, are refused before they are decoded', async () => {
    const large = { size: maxPhotoBytes + 1 } as Blob;
    await expect(readPhoto(large)).rejects.toThrow(/at most 60.0 MB/);
    const bytes = new Uint8Array(jpegOf(grey, 16, 8));
    const header = bytes.findIndex((v, i) => v === 0xff && bytes[i + 1] === 0xc0);
    bytes.set([0xff, 0xff, 0xff, 0xff], header + 5);
    await expect(readPhoto(new Blob([bytes]))).rejects.toThrow(/4295 megapixels; at most 64/);
  });

  it('400 mutated photos (seed 11) are read or refused in words, never another error', async () => {
    const bytes = new Uint8Array(jpegOf(grey, 16, 8, { Exif: exposureTags(15, 2.8, 3200) }));
    let state = 11;
    const random = () => {
      state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
      return state / 2 ** 32;
    };
    let readAgain = 0;
    for (let n = 0; n < 400; n++) {
      const mutated = bytes.slice(0, random() < 0.2 ? Math.floor(random() * bytes.length) : bytes.length);
      for (let k = 0; k < 6; k++)
        mutated[Math.floor(random() * Math.min(mutated.length, 260))] = Math.floor(random() * 256);
      try {
        const settings = await readPhoto(new Blob([mutated]));
        expect(settings.seconds === null || settings.seconds > 0).toBe(true);
        readAgain++;
      } catch (error) {
        expect(error).toBeInstanceOf(PhotoRefused);
      }
    }
    expect(readAgain).toBeGreaterThan(100);
  });
});
