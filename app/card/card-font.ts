import { create, type Font } from 'fontkit';
import { millimetresPerPoint } from '../../core/card/sheet/paper.ts';
import type { Measure, TextStyle } from '../../core/card/sheet/shapes.ts';

/** The files of the card's typeface, WOFF bytes: each weight is split into Latin and what else of Latin there is. */
export interface FontFiles {
  readonly '400': readonly [latin: Uint8Array, latinExt: Uint8Array];
  readonly '700': readonly [latin: Uint8Array, latinExt: Uint8Array];
}

/** Names of the files within the typeface's package. */
export const fontFileName = (subset: 'latin' | 'latin-ext', weight: 400 | 700): string =>
  `atkinson-hyperlegible-next-${subset}-${weight}-normal.woff`;

/** A stretch of a text that one file has the letters of. */
export interface FontRun {
  readonly text: string;
  readonly font: Font;
  readonly fontName: string;
}

/** In the place of a letter that the typeface does not have. */
const missing = '?';

/** The typeface of the card: how wide texts are, and which file has which letters. */
export class CardFont {
  /** Name and font of each file. */
  readonly fonts: ReadonlyMap<string, Font>;
  private readonly widths = new Map<string, number>();

  constructor(files: FontFiles) {
    this.fonts = new Map(
      ([400, 700] as const).flatMap((weight) => {
        const [latin, latinExt] = files[weight];
        return [
          [`${weight}-latin`, create(latin)],
          [`${weight}-latin-ext`, create(latinExt)],
        ] as const;
      }),
    );
  }

  /** A text in stretches of one file each; letters that no file has become question marks. */
  runs(text: string, { weight }: TextStyle): FontRun[] {
    const names = [`${weight}-latin`, `${weight}-latin-ext`];
    const runs: FontRun[] = [];
    for (const letter of text.normalize('NFC')) {
      const name = names.find((each) => this.fonts.get(each)?.hasGlyphForCodePoint(letter.codePointAt(0) as number));
      const fontName = name ?? (names[0] as string);
      const last = runs.at(-1);
      const own = name ? letter : missing;
      if (last?.fontName === fontName) runs[runs.length - 1] = { ...last, text: last.text + own };
      else runs.push({ text: own, font: this.fonts.get(fontName) as Font, fontName });
    }
    return runs;
  }

  /** Width of a line in millimetres. */
  readonly measure: Measure = (text, style) => {
    const key = `${style.weight} ${text}`;
    const known = this.widths.get(key);
    const em =
      known ??
      this.runs(text, style).reduce(
        (sum, { text: own, font }) => sum + font.layout(own).advanceWidth / font.unitsPerEm,
        0,
      );
    this.widths.set(key, em);
    return em * style.points * millimetresPerPoint;
  };
}
