/** How a line of text looks; all of it is in the page's typeface. */
export interface TextLook {
  readonly sizePixels: number;
  readonly isStrong: boolean;
  readonly isQuiet: boolean;
}

export interface SheetText extends TextLook {
  readonly text: string;
  readonly x: number;
  /** Of the line that the letters stand on. */
  readonly y: number;
}

/** Whole pixels from the sheet's upper left corner. */
export interface SheetBox {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Width of text in pixels. */
export type MeasureText = (text: string, look: TextLook) => number;
