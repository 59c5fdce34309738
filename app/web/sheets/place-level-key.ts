import { bandTexts } from '../picture/band-texts.ts';
import { levelBands } from '../render/stops-bands.ts';
import type { MeasureText, SheetBox, SheetText, TextLook } from './sheet-parts.ts';

/** A patch of a band's colour, #rrggbb. */
export interface Swatch extends SheetBox {
  readonly colour: string;
}

interface PlacedKey {
  readonly swatches: readonly Swatch[];
  readonly texts: readonly SheetText[];
  /** Where it ends, pixels down. */
  readonly end: number;
}

/** The bands of the map of levels with their numbers, side by side as far as there is room, then what they count from. */
export const placeLevelKey = (
  { x, y, width }: Omit<SheetBox, 'height'>,
  look: TextLook,
  measure: MeasureText,
): PlacedKey => {
  const letters = look.sizePixels;
  const side = Math.round(letters);
  const names = bandTexts(levelBands);
  const step = Math.ceil(side * 1.9 + Math.max(...names.map((name) => measure(name, look))));
  const line = Math.round(letters * 1.5);
  const perLine = Math.max(Math.floor(width / step), 1);
  const placeOf = (i: number) => ({ x: x + (i % perLine) * step, y: y + Math.floor(i / perLine) * line });
  const lettersDown = Math.round(letters * 0.9);
  const lines = Math.ceil(names.length / perLine);
  return {
    swatches: levelBands.colours.map((colour, i) => ({ ...placeOf(i), width: side, height: side, colour })),
    texts: [
      ...names.map((text, i): SheetText => {
        const at = placeOf(i);
        return { ...look, text, x: at.x + Math.round(side * 1.3), y: at.y + lettersDown };
      }),
      { ...look, isQuiet: true, text: 'stops from mid-grey', x, y: y + lines * line + lettersDown },
    ],
    end: y + (lines + 1) * line,
  };
};
