/**
 * What a printed page is made of. Millimetres from the paper's top left corner, y downward; type in points. Everything is
 * black on white; the order of the list is the order of painting, and of reading.
 */

export interface TextStyle {
  readonly points: number;
  readonly weight: 400 | 700;
}

/** Width of a line of text in millimetres, in the typeface that it will be painted with. */
export type Measure = (text: string, style: TextStyle) => number;

export type Shape =
  | {
      readonly kind: 'text';
      readonly text: string;
      readonly style: TextStyle;
      readonly anchor: 'start' | 'middle' | 'end';
      /** Of the baseline. */
      readonly x: number;
      readonly y: number;
      /** With a white rim, where it stands on lines. */
      readonly hasRim?: boolean;
    }
  | {
      readonly kind: 'line';
      readonly name?: string;
      readonly x1: number;
      readonly y1: number;
      readonly x2: number;
      readonly y2: number;
      readonly width: number;
      /** Lengths of dash and gap; left out = drawn through. */
      readonly dash?: readonly [number, number];
    }
  | {
      readonly kind: 'circle';
      readonly name?: string;
      readonly x: number;
      readonly y: number;
      readonly radius: number;
      /** 0 = no outline. */
      readonly width: number;
      readonly fill: 'none' | 'white' | 'black';
    }
  | {
      readonly kind: 'path';
      /** SVG path of absolute moves, lines and curves. */
      readonly path: string;
      readonly width: number;
      readonly fill: 'none' | 'white' | 'black';
      readonly dash?: readonly [number, number];
    }
  | {
      readonly kind: 'picture';
      readonly name: PictureName;
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
    }
  | {
      /** Shapes of which only what lies in a rectangle is painted. */
      readonly kind: 'clip';
      readonly x: number;
      readonly y: number;
      readonly width: number;
      readonly height: number;
      readonly shapes: readonly Shape[];
    };

/** The picture as planned, and the same without lamps. */
export type PictureName = 'lit' | 'unlit';

/** One side of one sheet of paper. */
export interface Page {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly shapes: readonly Shape[];
}

/** All shapes of a list, those inside clips too. */
export const everyShape = (shapes: readonly Shape[]): Exclude<Shape, { kind: 'clip' }>[] =>
  shapes.flatMap((shape) => (shape.kind === 'clip' ? everyShape(shape.shapes) : [shape]));
