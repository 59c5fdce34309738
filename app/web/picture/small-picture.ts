import { theDarkroom } from '../render/the-darkroom.ts';

/** Width of a small picture in pixels, and the quality of its JPEG: a few kB. */
const width = 160;
const quality = 0.7;

/** What a screen shows, small, as a data address; null where it shows nothing. */
export const smallPicture = (screen: string): string | null => {
  const from = theDarkroom().screen(screen);
  if (!from?.width || !from.height) return null;
  const small = Object.assign(document.createElement('canvas'), {
    width,
    height: Math.max(1, Math.round((width * from.height) / from.width)),
  });
  const context = small.getContext('2d', { alpha: false });
  if (!context) return null;
  context.imageSmoothingQuality = 'high';
  context.drawImage(from, 0, 0, small.width, small.height);
  return small.toDataURL('image/jpeg', quality);
};
