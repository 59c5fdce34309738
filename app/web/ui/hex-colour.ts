import type { Triple } from '../../../core/colour/matrix.ts';
import { decodeSrgb, encodeSrgb } from '../../../core/colour/srgb.ts';

/** Linear sRGB from "#ff8800", "ff8800" or "#f80"; null when it can't be read. */
export const linearFromHex = (text: string): Triple | null => {
  const digits = /^\s*#?([0-9a-f]{3}|[0-9a-f]{6})\s*$/i.exec(text)?.[1];
  if (digits === undefined) return null;
  const long = digits.length === 3 ? digits.replace(/./g, '$&$&') : digits;
  const channel = (at: number) => decodeSrgb(Number.parseInt(long.slice(at, at + 2), 16) / 255);
  return [channel(0), channel(2), channel(4)];
};

/** "#ff8800" from linear sRGB, each 0 to 1. */
export const hexFromLinear = (linear: Triple): string =>
  `#${linear
    .map((v) =>
      Math.round(255 * encodeSrgb(v))
        .toString(16)
        .padStart(2, '0'),
    )
    .join('')}`;
