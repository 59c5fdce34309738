import { sceneOf } from '../picture/scene-of.ts';
import type { Size } from '../render/layer-store.ts';
import type { PrintOrder } from '../render/print-scene.ts';
import { theDarkroom } from '../render/the-darkroom.ts';
import { cellsOf, type Sheet, type SheetCell } from './sheet.ts';

/** Told how far the work is, and able to call it off. */
export type Watch = Pick<PrintOrder, 'onProgress' | 'signal'>;

/** Develops the pictures of a sheet, by screen; null when it was called off. Fails where they can’t be drawn. */
export const developPictures = async (
  sheet: Sheet,
  sizeOf: (cell: SheetCell) => Size,
  watch: Watch,
): Promise<ReadonlyMap<string, HTMLCanvasElement> | null> => {
  const wanted = cellsOf(sheet).map((cell) => ({ ...cell.picture, size: sizeOf(cell) }));
  // as fine as the sheet shows them, if memory allows
  const widest = Math.max(1, ...wanted.map(({ size }) => size.width));
  const scene = sceneOf(wanted, { frame: sheet.frame, samples: sheet.samples, showsEarly: true, widest });
  return theDarkroom().print({ scene, ...watch });
};
