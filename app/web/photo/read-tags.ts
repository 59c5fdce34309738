import { parse } from 'exifr/dist/mini.esm.mjs';
import { type ExifTags, namedTags } from '../../../core/testshot/exif-tags.ts';

/** Exif tags of a JPEG's first part; none where it has none, or none that can be read. */
export const readTags = async (head: Uint8Array): Promise<ExifTags> => {
  try {
    const tags: unknown = await parse(head, {
      tiff: true,
      exif: true,
      gps: false,
      ifd1: false,
      interop: false,
      translateKeys: false,
      translateValues: false,
      reviveValues: false,
    });
    return tags && typeof tags === 'object' ? namedTags(tags as Record<string, unknown>) : {};
  } catch {
    // a photo without its tags is still a photo
    return {};
  }
};
