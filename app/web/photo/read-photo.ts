import { type PhotoSettings, photoSettings } from '../../../core/testshot/photo-settings.ts';
import { jpegSize } from './jpeg-size.ts';
import { kindRefused, photoKind } from './photo-kind.ts';
import { readTags } from './read-tags.ts';

/** Largest file and picture that are taken, so that the page stays quick. */
export const maxPhotoBytes = 60e6;
export const maxPhotoPixels = 64e6;
/** Exif lies in the first 64 kB segment or two, the frame header after it. */
const headBytes = 1e6;

/** Why a photo can't be used: a sentence without its end. */
export class PhotoRefused extends Error {}

/** What the head of a photo says; the picture is not decoded. */
export const readPhoto = async (file: Blob): Promise<PhotoSettings> => {
  const megabytes = (bytes: number) => `${(bytes / 1e6).toFixed(1)} MB`;
  if (file.size > maxPhotoBytes)
    throw new PhotoRefused(`It has ${megabytes(file.size)}; at most ${megabytes(maxPhotoBytes)} are read`);
  const head = new Uint8Array(await file.slice(0, headBytes).arrayBuffer());
  const kind = photoKind(head);
  if (kind !== 'jpeg') throw new PhotoRefused(kindRefused[kind]);
  const size = jpegSize(head);
  if (!size || size.width * size.height === 0)
    throw new PhotoRefused('It is a JPEG without a picture in its first part');
  const pixels = size.width * size.height;
  if (pixels > maxPhotoPixels)
    throw new PhotoRefused(
      `It has ${Math.round(pixels / 1e6)} megapixels; at most ${maxPhotoPixels / 1e6} are read. Save a smaller copy and open that`,
    );
  return photoSettings(await readTags(head));
};
