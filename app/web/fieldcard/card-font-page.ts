import latin400 from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-400-normal.woff?url';
import latin700 from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-700-normal.woff?url';
import latinExt400 from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-400-normal.woff?url';
import latinExt700 from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-700-normal.woff?url';
import { CardFont } from '../../card/card-font.ts';

const fetchBytes = async (url: string): Promise<Uint8Array<ArrayBuffer>> => {
  const answer = await fetch(url);
  if (!answer.ok) throw new Error(`the typeface did not come (${answer.status})`);
  return new Uint8Array(await answer.arrayBuffer());
};

/** Letters that the latin files have, as their package divides them; the others hold the rest. */
const latinRange =
  'U+0000-00FF, U+0131, U+0152-0153, U+02BB-02BC, U+02C6, U+02DA, U+02DC, U+2000-206F, U+20AC, U+2122, U+2212';
const extRange =
  'U+0100-0130, U+0132-0151, U+0154-02BA, U+02BD-02C5, U+02C7-02CC, U+1E00-1E9F, U+1EF2-1EFF, U+20A0-20AB, U+20AD-20C0';

/** Fetches the typeface of the card, for its page as for its PDF: both set the very same letters. */
export const fetchCardFont = async (): Promise<CardFont> => {
  const [a, b, c, d] = await Promise.all([latin400, latinExt400, latin700, latinExt700].map(fetchBytes));
  if (!a || !b || !c || !d) throw new Error('the typeface did not come');
  const faces = [
    [a, '400', latinRange],
    [b, '400', extRange],
    [c, '700', latinRange],
    [d, '700', extRange],
  ] as const;
  for (const [bytes, weight, unicodeRange] of faces)
    document.fonts.add(await new FontFace('Field Card', bytes.buffer, { weight, unicodeRange }).load());
  return new CardFont({ '400': [a, b], '700': [c, d] });
};
