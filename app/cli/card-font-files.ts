import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { CardFont, fontFileName } from '../card/card-font.ts';

const { resolve } = createRequire(import.meta.url);

/** The typeface of the card from its package. */
export const cardFontFromPackage = (): CardFont => {
  const read = (subset: 'latin' | 'latin-ext', weight: 400 | 700) =>
    new Uint8Array(
      readFileSync(resolve(`@fontsource/atkinson-hyperlegible-next/files/${fontFileName(subset, weight)}`)),
    );
  const both = (weight: 400 | 700) => [read('latin', weight), read('latin-ext', weight)] as const;
  return new CardFont({ '400': both(400), '700': both(700) });
};
