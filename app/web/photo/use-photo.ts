import { useEffect, useState } from 'react';
import type { PhotoSettings } from '../../../core/testshot/photo-settings.ts';
import { decodePhoto } from './decode-photo.ts';
import { PhotoRefused, readPhoto } from './read-photo.ts';

/** A photo that is open. */
export interface Photo {
  /** null until it is read. */
  readonly settings: PhotoSettings | null;
  /** Upright; null until it is decoded. */
  readonly picture: ImageBitmap | null;
  /** Why it can’t be used, a sentence without its end; null = nothing is wrong. */
  readonly fault: string | null;
}

const nothing: Photo = { settings: null, picture: null, fault: null };

/** Reads and decodes a photo as long as the dialog has it. */
export const usePhoto = (file: File | null): Photo => {
  const [photo, setPhoto] = useState({ ...nothing, of: file });
  useEffect(() => {
    setPhoto({ ...nothing, of: file });
    if (!file) return;
    let isOld = false;
    let decoded: ImageBitmap | null = null;
    const read = async () => {
      const settings = await readPhoto(file);
      const picture = await decodePhoto(file);
      decoded = picture;
      if (isOld) picture.close();
      else setPhoto({ settings, picture, fault: null, of: file });
    };
    read().catch((error: unknown) => {
      const fault = error instanceof PhotoRefused ? error.message : 'It could not be read';
      if (!isOld) setPhoto({ ...nothing, fault, of: file });
    });
    return () => {
      isOld = true;
      decoded?.close();
    };
  }, [file]);
  // from the moment that another file is wanted the one before is closed: nothing may draw it any more
  return photo.of === file ? photo : nothing;
};
