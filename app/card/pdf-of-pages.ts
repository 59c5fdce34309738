import { PDFDocument } from 'pdfkit';
import { toBytes } from 'pdfkit/output';
import { millimetresPerPoint } from '../../core/card/sheet/paper.ts';
import type { Page, PictureName, Shape } from '../../core/card/sheet/shapes.ts';
import { capMm } from '../../core/card/sheet/type.ts';
import type { CardFont } from './card-font.ts';

/** Grey pictures as PNG files. */
export type PicturePngs = Partial<Record<PictureName, Uint8Array>>;

interface Painter {
  readonly document: PDFDocument;
  readonly font: CardFont;
  readonly pictures: PicturePngs;
}

/** Grey of the page's fills, as the one-ink operators of ISO 32000-1, 8.6.8: black is black ink alone. */
const grey = { white: '1 g', black: '0 g' } as const;

type TextShape = Extract<Shape, { kind: 'text' }>;

const paintText = ({ document, font }: Painter, { text, style, anchor, x, y, hasRim }: TextShape) => {
  const width = font.measure(text, style);
  let left = anchor === 'start' ? x : anchor === 'middle' ? x - width / 2 : x - width;
  if (hasRim) {
    const cap = capMm(style);
    document
      .addContent(grey.white)
      .rect(left - 0.4, y - cap - 0.4, width + 0.8, cap + 0.8)
      .fill();
  }
  document.addContent(grey.black);
  for (const run of font.runs(text, style)) {
    // type is set in millimetres here: the page is scaled to them
    document
      .font(run.fontName, style.points * millimetresPerPoint)
      .text(run.text, left, y, { lineBreak: false, baseline: 'alphabetic' });
    left += font.measure(run.text, style);
  }
};

const paintPath = (
  { document }: Painter,
  draw: () => void,
  width: number,
  fill: 'none' | 'white' | 'black',
  dash?: readonly [number, number],
) => {
  draw();
  if (fill !== 'none') document.addContent(grey[fill]);
  if (width > 0) document.addContent('0 G').lineWidth(width);
  if (dash) document.dash(dash[0], { space: dash[1] });
  if (fill !== 'none' && width > 0) document.fillAndStroke();
  else if (fill !== 'none') document.fill();
  else document.stroke();
  if (dash) document.undash();
};

const paint = (painter: Painter, shape: Shape): void => {
  const { document, pictures } = painter;
  switch (shape.kind) {
    case 'text':
      paintText(painter, shape);
      break;
    case 'line': {
      const { x1, y1, x2, y2, width, dash } = shape;
      paintPath(painter, () => document.moveTo(x1, y1).lineTo(x2, y2), width, 'none', dash);
      break;
    }
    case 'circle': {
      const { x, y, radius, width, fill } = shape;
      paintPath(painter, () => document.circle(x, y, radius), width, fill);
      break;
    }
    case 'path':
      paintPath(painter, () => document.path(shape.path), shape.width, shape.fill, shape.dash);
      break;
    case 'picture': {
      const { name, x, y, width, height } = shape;
      const png = pictures[name];
      if (png) document.image(png, x, y, { width, height });
      break;
    }
    case 'clip': {
      const { x, y, width, height, shapes } = shape;
      document.save().rect(x, y, width, height).clip();
      for (const each of shapes) paint(painter, each);
      document.restore();
    }
  }
};

/** Pages as a PDF: text that can be selected, the typeface embedded as far as it is used, black and grey alone. */
export const pdfOfPages = async (
  pages: readonly Page[],
  title: string,
  font: CardFont,
  pictures: PicturePngs,
): Promise<Uint8Array> => {
  const [first] = pages;
  if (!first) throw new RangeError('a PDF needs a page');
  const points = (millimetres: number) => millimetres / millimetresPerPoint;
  const document = new PDFDocument({
    size: [points(first.widthMm), points(first.heightMm)],
    margin: 0,
    autoFirstPage: false,
    font: null,
    lang: 'en',
    displayTitle: true,
    info: { Title: title, Creator: 'Lampfall' },
  });
  for (const [name, each] of font.fonts) document.registerFont(name, each);
  const bytes = toBytes(document);
  for (const page of pages) {
    document
      .addPage()
      .scale(1 / millimetresPerPoint)
      .lineJoin('round');
    for (const shape of page.shapes) paint({ document, font, pictures }, shape);
  }
  document.end();
  return bytes;
};
