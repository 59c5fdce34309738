import type { Measure, Shape, TextStyle } from './shapes.ts';
import { capMm, lineMm } from './type.ts';
import { wrapped } from './wrap-text.ts';

/** A stretch of shapes from a top edge down, and where it ends. */
export interface Block {
  readonly shapes: readonly Shape[];
  readonly bottom: number;
}

/** Lines of one style under each other, the first line's capitals at `top`. */
export const textLines = (
  lines: readonly string[],
  style: TextStyle,
  x: number,
  top: number,
  anchor: 'start' | 'middle' | 'end' = 'start',
): Block => ({
  shapes: lines.map((text, i) => ({
    kind: 'text',
    text,
    style,
    anchor,
    x,
    y: top + capMm(style) + i * lineMm(style),
  })),
  bottom: top + lines.length * lineMm(style),
});

/** Texts one after the other, each wrapped to a width. */
export const paragraphs = (
  texts: readonly string[],
  style: TextStyle,
  { x, top, width, measure }: { x: number; top: number; width: number; measure: Measure },
): Block =>
  textLines(
    texts.flatMap((text) => wrapped(text, style, width, measure)),
    style,
    x,
    top,
  );

/** Blocks drawn one under the other, each told where it begins. */
export const stacked = (top: number, makers: readonly ((top: number) => Block)[]): Block =>
  makers.reduce<Block>(
    ({ shapes, bottom }, make) => {
      const next = make(bottom);
      return { shapes: [...shapes, ...next.shapes], bottom: next.bottom };
    },
    { shapes: [], bottom: top },
  );
