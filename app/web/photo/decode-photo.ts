import type { PixelPatch } from '../../../core/testshot/spot-level.ts';
import { PhotoRefused } from './read-photo.ts';

/**
 * The photo upright: the browser decodes it away from the page, turns it as its tags say, once, and brings its colours to
 * sRGB.
 */
export const decodePhoto = async (file: Blob): Promise<ImageBitmap> => {
  try {
    return await createImageBitmap(file, { imageOrientation: 'from-image', colorSpaceConversion: 'default' });
  } catch {
    throw new PhotoRefused('Its picture can’t be decoded: it is broken or cut short');
  }
};

/** The square round a place of a photo, pixel by pixel, held within it. */
export const cutSpot = (photo: ImageBitmap, [x, y]: readonly [number, number], radius: number): PixelPatch => {
  const side = Math.min(Math.max(Math.round(2 * radius * photo.width), 4), 400, photo.width, photo.height);
  const held = (middle: number, length: number) => Math.min(Math.max(Math.round(middle - side / 2), 0), length - side);
  const canvas = document.createElement('canvas');
  canvas.width = side;
  canvas.height = side;
  const pen = canvas.getContext('2d', { willReadFrequently: true });
  if (!pen) throw new PhotoRefused('This browser gives no canvas to read it by');
  pen.drawImage(
    photo,
    held(x * photo.width, photo.width),
    held(y * photo.height, photo.height),
    side,
    side,
    0,
    0,
    side,
    side,
  );
  const { data, width, height } = pen.getImageData(0, 0, side, side);
  return { data, width, height };
};
