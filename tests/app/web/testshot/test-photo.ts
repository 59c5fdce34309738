import jpeg from 'jpeg-js';
import piexif from 'piexifjs';
import { parseSetup } from '../../../../core/setup/parse-setup.ts';
import type { Scheme, Setup } from '../../../../core/setup/schema/setup.ts';
import { developPicture, tracePicture } from '../../../../core/trace/picture.ts';
import { buildWorld, type WorldFrame } from '../../../../core/world/world.ts';

/** Exif as the independent writer takes it: the main directory and that of the exposure, by tag number. */
export interface ExifToWrite {
  readonly '0th'?: Readonly<Record<number, unknown>>;
  readonly Exif?: Readonly<Record<number, unknown>> | undefined;
}

/** A baseline JPEG of an independent encoder, with tags of an independent writer. */
export const jpegOf = (
  rgb: Uint8Array,
  width: number,
  height: number,
  exif: ExifToWrite | null = null,
  quality = 92,
): Buffer => {
  const data = Buffer.alloc(width * height * 4, 255);
  for (let p = 0; p < width * height; p++) data.set(rgb.subarray(3 * p, 3 * p + 3), 4 * p);
  const plain = jpeg.encode({ data, width, height }, quality).data;
  if (!exif) return plain;
  return Buffer.from(piexif.insert(piexif.dump(exif), plain.toString('binary')), 'binary');
};

/** What a camera writes of an exposure. */
export const exposureTags = (seconds: number, aperture: number, iso: number): ExifToWrite['Exif'] => ({
  [piexif.ExifIFD.ExposureTime]: seconds >= 1 ? [Math.round(seconds * 10), 10] : [1, Math.round(1 / seconds)],
  [piexif.ExifIFD.FNumber]: [Math.round(aperture * 10), 10],
  [piexif.ExifIFD.ISOSpeedRatings]: iso,
  [piexif.ExifIFD.FocalLength]: [240, 10],
  [piexif.ExifIFD.DateTimeOriginal]: '2026:10:09 22:41:07',
});

/** A setup whose lamps give so many stops more than their boxes say. */
export const withRealLamps = (text: string, stops: number): Setup => {
  const setup = parseSetup(text);
  return { ...setup, lamps: setup.lamps.map((lamp) => ({ ...lamp, correctionStops: stops })) };
};

/** Photo of a frame, rendered by the reference with a plain response. */
export const photoOf = (setup: Setup, frameIndex: number, width: number, height: number, samples: number): Buffer => {
  const scheme = setup.schemes[0] as Scheme;
  const world = buildWorld(setup, scheme);
  const frame = scheme.frames[frameIndex] as Scheme['frames'][number];
  const linear = tracePicture(world, world.frames[frameIndex] as WorldFrame, { width, height, samples });
  const tags = exposureTags(frame.seconds, frame.aperture, frame.iso);
  return jpegOf(developPicture(linear, 'plain'), width, height, { Exif: tags });
};
