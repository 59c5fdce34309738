import { drawPlan } from '../ui/draw-plan.ts';
import { planShapes } from '../ui/plan-shapes.ts';
import type { SheetLayout } from './sheet-layout.ts';
import type { MeasureText, TextLook } from './sheet-parts.ts';

/** The page's own typeface and colours, so that a sheet looks as the screen does. */
const lookOfPage = () => {
  const page = getComputedStyle(document.documentElement);
  const colour = (name: string) => page.getPropertyValue(name).trim();
  return {
    typeface: getComputedStyle(document.body).fontFamily,
    ground: colour('--ground'),
    text: colour('--text'),
    quiet: colour('--quiet'),
  };
};

/** Height of small letters on the page, pixels. */
const screenLetters = 12;

const fontOf = ({ sizePixels, isStrong }: TextLook, typeface: string) =>
  `${isStrong ? 650 : 400} ${sizePixels}px ${typeface}`;

/** Measures text in the page's typeface; wait for `document.fonts.ready` before. */
export const measureOnPage = (): MeasureText => {
  const ctx = document.createElement('canvas').getContext('2d');
  const { typeface } = lookOfPage();
  return (text, look) => {
    if (!ctx) return text.length * look.sizePixels * 0.6;
    ctx.font = fontOf(look, typeface);
    return ctx.measureText(text).width;
  };
};

/**
 * Draws a sheet onto a canvas of its own; null where the browser gives none of that size. Pictures go by the name of their
 * screen; one that is missing leaves its place black.
 */
export const drawSheet = (
  { width, height, letters, texts, swatches, cells }: SheetLayout,
  pictures: ReadonlyMap<string, CanvasImageSource>,
): HTMLCanvasElement | null => {
  const canvas = Object.assign(document.createElement('canvas'), { width, height });
  const ctx = canvas.getContext('2d', { alpha: false });
  if (!ctx) return null;
  const look = lookOfPage();
  ctx.fillStyle = look.ground;
  ctx.fillRect(0, 0, width, height);
  for (const { cell, picture, plan } of cells) {
    const image = pictures.get(cell.picture.screen);
    ctx.fillStyle = '#000';
    ctx.fillRect(picture.x, picture.y, picture.width, picture.height);
    if (image) ctx.drawImage(image, picture.x, picture.y, picture.width, picture.height);
    if (!cell.plan || !plan) continue;
    // as if the sheet were as wide as a screen: its lines and letters grow with those of the sheet
    const sizePixels = (plan.width * screenLetters) / letters;
    const shapes = planShapes(cell.plan.setup, cell.plan.scheme, { view: cell.plan.view, sizePixels });
    drawPlan(ctx, shapes, plan.x, plan.y, plan.width);
  }
  for (const { colour, ...box } of swatches) {
    ctx.fillStyle = colour;
    ctx.fillRect(box.x, box.y, box.width, box.height);
  }
  for (const text of texts) {
    ctx.font = fontOf(text, look.typeface);
    ctx.fillStyle = text.isQuiet ? look.quiet : look.text;
    ctx.fillText(text.text, text.x, text.y);
  }
  return canvas;
};
