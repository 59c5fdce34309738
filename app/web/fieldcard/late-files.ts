import type { CardFont } from '../../card/card-font.ts';

/** The PDF library comes when a PDF is wanted, or when the page is at rest. */
export const loadPdf = () => import('../../card/pdf-of-pages.ts');

let font: Promise<CardFont> | null = null;

/** The card's typeface, fetched once; asked for again after it did not come. */
export const loadCardFont = (): Promise<CardFont> => {
  font ??= import('./card-font-page.ts')
    .then(({ fetchCardFont }) => fetchCardFont())
    .catch((error: unknown) => {
      font = null;
      throw error;
    });
  return font;
};
