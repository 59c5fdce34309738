import { download } from '../ui/download.ts';
import { developPictures, type Watch } from './develop-pictures.ts';
import { drawSheet, measureOnPage } from './draw-sheet.ts';
import { fitSheet } from './fit-sheet.ts';
import type { Sheet } from './sheet.ts';

/** What came of it, in words for the user; null when it was called off. */
export type SaveOutcome = { readonly tone: 'problem' | 'done'; readonly text: string } | null;

/** Makes one PNG of a sheet and hands it to the browser as a download. Nothing leaves the machine. */
export const saveSheetFile = async (sheet: Sheet, widthPixels: number, watch: Watch): Promise<SaveOutcome> => {
  await document.fonts.ready;
  const fitted = fitSheet(sheet, widthPixels, measureOnPage());
  if ('refusal' in fitted) return { tone: 'problem', text: fitted.refusal };
  const { layout } = fitted;
  const boxes = new Map(layout.cells.map(({ cell, picture }) => [cell, picture]));
  const pictures = await developPictures(sheet, (cell) => boxes.get(cell) ?? { width: 1, height: 1 }, watch);
  if (!pictures) return null;
  const canvas = drawSheet(layout, pictures);
  const blob = canvas && (await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png')));
  if (!blob)
    return { tone: 'problem', text: 'The browser could not make a picture of that size. Take a smaller width.' };
  const name = `${sheet.fileName}.png`;
  download(blob, name);
  return { tone: 'done', text: `Saved as ${name}, ${layout.width} × ${layout.height} px` };
};
