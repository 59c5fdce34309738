import { placeLevelKey, type Swatch } from './place-level-key.ts';
import type { Sheet, SheetCell } from './sheet.ts';
import type { MeasureText, SheetBox, SheetText, TextLook } from './sheet-parts.ts';
import { wrapWords } from './wrap-words.ts';

export interface PlacedCell {
  readonly cell: SheetCell;
  readonly picture: SheetBox;
  readonly plan: SheetBox | null;
}

export interface SheetLayout {
  readonly width: number;
  readonly height: number;
  readonly columns: number;
  /** Height of the letters that most of it is written in, pixels. */
  readonly letters: number;
  readonly texts: readonly SheetText[];
  /** Of the key to a map of levels. */
  readonly swatches: readonly Swatch[];
  readonly cells: readonly PlacedCell[];
}

/** Smaller letters are not read, pixels. */
const leastLetters = 11;

/** A cell narrower than this many heights of its letters has no room for its numbers. */
const leastCellLetters = 12;

/** Beside the plan is room for this many heights of letters, or the numbers stand under it. */
const besidePlanLetters = 13;

/** Leading, as a share of the letters' height. */
const leading = 1.4;

/** Smaller plans are not read. */
const leastPlanPixels = 110;

/** Puts lines under each other; the answer is where they end. */
const placeLines = (
  texts: SheetText[],
  measure: MeasureText,
  lines: readonly string[],
  box: Omit<SheetBox, 'height'>,
  look: TextLook,
): number => {
  const step = Math.round(look.sizePixels * leading);
  const wrapped = lines.flatMap((line) => wrapWords(line, box.width, (text) => measure(text, look)));
  wrapped.forEach((text, i) => {
    texts.push({ ...look, text, x: box.x, y: Math.round(box.y + i * step + look.sizePixels * 1.05) });
  });
  return box.y + wrapped.length * step;
};

/**
 * Where everything on a sheet stands. Letters grow with the sheet, so that a wider one is the same sheet in finer pixels;
 * where the smallest letters would not fit their cells, fewer cells stand side by side.
 *
 * @param widthPixels 640 to 4096
 */
export const sheetLayout = (sheet: Sheet, widthPixels: number, measure: MeasureText): SheetLayout => {
  const margin = Math.round(Math.max(widthPixels / 60, 10));
  const gap = margin;
  const inner = widthPixels - 2 * margin;
  const least = leastCellLetters * leastLetters;
  const columns = Math.max(Math.min(sheet.columns, Math.floor((inner + gap) / (least + gap))), 1);
  const wide = Math.floor((inner - (columns - 1) * gap) / columns);
  const letters = Math.max(Math.min(wide / 26, widthPixels / 72), leastLetters);
  const plain: TextLook = { sizePixels: letters, isStrong: false, isQuiet: false };
  const texts: SheetText[] = [];
  const cells: PlacedCell[] = [];
  const put = (lines: readonly string[], box: Omit<SheetBox, 'height'>, look: Partial<TextLook> = {}) =>
    placeLines(texts, measure, lines, box, { ...plain, ...look });

  /** Places a cell and answers where it ends. */
  const placeCell = (cell: SheetCell, x: number, top: number): number => {
    const head = put([cell.name], { x, y: top, width: wide }, { isStrong: true });
    const picture = { x, y: Math.round(head + letters / 4), width: wide, height: Math.round(wide / cell.aspect) };
    const under = picture.y + picture.height + Math.round(letters / 2);
    if (!cell.plan) {
      cells.push({ cell, picture, plan: null });
      return put(cell.lines, { x, y: under, width: wide });
    }
    const isBeside = wide * 0.6 - gap / 2 >= besidePlanLetters * letters;
    const side = isBeside ? Math.round(wide * 0.4) : Math.min(wide, Math.max(Math.round(wide * 0.6), leastPlanPixels));
    const plan = { x, y: under, width: side, height: side };
    cells.push({ cell, picture, plan });
    const afterPlan = under + side;
    if (!isBeside) return put(cell.lines, { x, y: afterPlan + Math.round(letters / 2), width: wide });
    const beside = x + side + Math.round(gap / 2);
    return Math.max(afterPlan, put(cell.lines, { x: beside, y: under, width: x + wide - beside }));
  };

  const across = { x: margin, width: inner };
  let y = put([sheet.title], { ...across, y: margin }, { sizePixels: letters * 1.6, isStrong: true });
  if (sheet.subtitle) y = put([sheet.subtitle], { ...across, y }, { isQuiet: true });
  const key = sheet.hasLevelKey ? placeLevelKey({ ...across, y: y + Math.round(letters / 2) }, plain, measure) : null;
  if (key) {
    texts.push(...key.texts);
    y = key.end;
  }
  for (const group of sheet.groups) {
    y += gap;
    if (group.name)
      y = put([group.name], { ...across, y }, { sizePixels: letters * 1.2, isStrong: true }) + Math.round(letters / 2);
    for (let first = 0; first < group.cells.length; first += columns) {
      const row = group.cells.slice(first, first + columns);
      const top = first > 0 ? y + gap : y;
      y = Math.max(...row.map((cell, i) => placeCell(cell, margin + i * (wide + gap), top)));
    }
  }
  const swatches = key?.swatches ?? [];
  return { width: widthPixels, height: Math.ceil(y) + margin, columns, letters, texts, swatches, cells };
};
