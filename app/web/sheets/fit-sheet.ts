import type { Sheet } from './sheet.ts';
import { type SheetLayout, sheetLayout } from './sheet-layout.ts';
import type { MeasureText } from './sheet-parts.ts';

/** Widths that a sheet may be saved at, and its greatest height, in pixels: what browsers' canvases and screens take. */
export const sheetLimits = { narrowest: 640, widest: 4096, tallest: 8192 } as const;

/** The width that is told is a multiple of this. */
const stepPixels = 16;

/** The last number for which something holds, by halving: it holds for the first, and not for the end. */
const lastWhere = (first: number, end: number, holds: (n: number) => boolean): number => {
  let [yes, no] = [first, end];
  while (no - yes > 1) {
    const middle = Math.floor((yes + no) / 2);
    if (holds(middle)) yes = middle;
    else no = middle;
  }
  return yes;
};

/**
 * The widest width that fits; null when none does. A sheet gets lower with its width as long as as many cells stand side
 * by side; with fewer it only gets taller.
 */
const widestThatFits = (sheet: Sheet, from: number, measure: MeasureText): number | null => {
  const layoutAt = (steps: number) => sheetLayout(sheet, steps * stepPixels, measure);
  const fits = (steps: number) => layoutAt(steps).height <= sheetLimits.tallest;
  const [least, most] = [Math.ceil(sheetLimits.narrowest / stepPixels), Math.floor(from / stepPixels)];
  const { columns } = layoutAt(most);
  const hasFewer = (steps: number) => layoutAt(steps).columns < columns;
  const first = hasFewer(least) ? lastWhere(least, most, hasFewer) + 1 : least;
  return fits(first) ? lastWhere(first, most + 1, fits) * stepPixels : null;
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
