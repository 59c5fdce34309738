/** Of the libraries for fonts and PDF, what the card uses; they come without types. */

declare module 'fontkit' {
  export interface Font {
    readonly unitsPerEm: number;
    hasGlyphForCodePoint(codePoint: number): boolean;
    layout(text: string): { readonly advanceWidth: number };
  }
  export const create: (bytes: Uint8Array) => Font;
}

declare module 'pdfkit' {
  import type { Font } from 'fontkit';

  interface DocumentOptions {
    /** Points. */
    readonly size: readonly [number, number];
    readonly margin: number;
    readonly autoFirstPage: boolean;
    readonly font?: string | null;
    readonly lang: string;
    readonly displayTitle: boolean;
    readonly info: Readonly<Record<string, string>>;
  }
  export class PDFDocument {
    constructor(options: DocumentOptions);
    addPage(): this;
    registerFont(name: string, source: Font): this;
    font(name: string, points: number): this;
    text(
      text: string,
      x: number,
      y: number,
      options: { readonly lineBreak: false; readonly baseline: 'alphabetic' },
    ): this;
    addContent(operators: string): this;
    save(): this;
    restore(): this;
    lineWidth(points: number): this;
    lineJoin(join: 'round'): this;
    dash(length: number, options: { readonly space: number }): this;
    undash(): this;
    moveTo(x: number, y: number): this;
    lineTo(x: number, y: number): this;
    circle(x: number, y: number, radius: number): this;
    rect(x: number, y: number, width: number, height: number): this;
    path(path: string): this;
    fill(): this;
    stroke(): this;
    fillAndStroke(): this;
    clip(): this;
    scale(factor: number): this;
    image(source: Uint8Array, x: number, y: number, options: { readonly width: number; readonly height: number }): this;
    end(): void;
  }
}

declare module 'pdfkit/output' {
  import type { PDFDocument } from 'pdfkit';
  export const toBytes: (document: PDFDocument) => Promise<Uint8Array>;
}
