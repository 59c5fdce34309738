import type { Sheet } from './sheet.ts';
import { type MeasureText, type SheetLayout, sheetLayout } from './sheet-layout.ts';

/** Widths that a sheet may be saved at, and its greatest height, in pixels: what browsers' canvases and screens take. */
export const sheetLimits = { narrowest: 640, widest: 4096, tallest: 8192 } as const;

/** Widths tried when looking for one that fits lie this far apart. */
const stepPixels = 16;

const widestThatFits = (sheet: Sheet, from: number, measure: MeasureText): number | null => {
  for (let width = from - (from % stepPixels); width >= sheetLimits.narrowest; width -= stepPixels)
    if (sheetLayout(sheet, width, measure).height <= sheetLimits.tallest) return width;
  return null;
};

/** The layout of a sheet, or why there is none and what would do. */
export const fitSheet = (
  sheet: Sheet,
  widthPixels: number,
  measure: MeasureText,
): { readonly layout: SheetLayout } | { readonly refusal: string } => {
  const layout = sheetLayout(sheet, widthPixels, measure);
  if (layout.height <= sheetLimits.tallest) return { layout };
  const width = widestThatFits(sheet, widthPixels, measure);
  const instead =
    width === null ? 'Show fewer pictures' : `Take a width of ${width} px or less, or show fewer pictures`;
  return {
    refusal: `${widthPixels} px wide, the sheet would be ${layout.height} px tall; ${sheetLimits.tallest} are possible. ${instead}.`,
  };
};
