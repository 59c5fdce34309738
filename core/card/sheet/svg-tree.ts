import { millimetresPerPoint } from './paper.ts';
import type { Page, PictureName, Shape } from './shapes.ts';

/** The typeface of the card and what stands in for it. */
const cardFamily = 'Field Card, Atkinson Hyperlegible Next, Atkinson Hyperlegible Next Variable, sans-serif';

type Attributes = Readonly<Record<string, string>>;

/** An element of SVG: what it is called, its attributes, and what it holds: elements, or words. */
export interface SvgElement {
  readonly tag: string;
  readonly attributes: Attributes;
  readonly children: readonly SvgElement[] | string;
}

const short = (value: number): string => String(Number(value.toFixed(3)));

/** Attributes as SVG writes them, those that are undefined left out. */
const written = (values: Readonly<Record<string, string | number | undefined>>): Attributes =>
  Object.fromEntries(
    Object.entries(values).flatMap(([name, value]) =>
      value === undefined ? [] : [[name, typeof value === 'number' ? short(value) : value]],
    ),
  );

const element = (
  tag: string,
  values: Readonly<Record<string, string | number | undefined>>,
  children: SvgElement['children'] = [],
): SvgElement => ({ tag, attributes: written(values), children });

const strokeOf = (width: number, dash?: readonly [number, number]) => ({
  stroke: width > 0 ? '#000' : 'none',
  'stroke-width': width > 0 ? width : undefined,
  'stroke-dasharray': dash?.join(' '),
});
const fills = { none: 'none', white: '#fff', black: '#000' } as const;
const anchors = { start: undefined, middle: 'middle', end: 'end' } as const;

type PictureUrls = Partial<Record<PictureName, string>>;

const textOf = ({ text, style, anchor, x, y, hasRim }: Extract<Shape, { kind: 'text' }>): SvgElement => {
  const rim = hasRim
    ? { stroke: '#fff', 'stroke-width': 0.9, 'paint-order': 'stroke', 'stroke-linejoin': 'round' }
    : {};
  const size = style.points * millimetresPerPoint;
  const own = { x, y, 'font-size': size, 'font-weight': style.weight, 'text-anchor': anchors[anchor], ...rim };
  return element('text', own, text);
};

const elementsOf = (shape: Shape, pictures: PictureUrls): SvgElement[] => {
  switch (shape.kind) {
    case 'text':
      return [textOf(shape)];
    case 'line': {
      const { name, x1, y1, x2, y2, width, dash } = shape;
      return [element('line', { id: name, x1, y1, x2, y2, ...strokeOf(width, dash) })];
    }
    case 'circle': {
      const { name, x, y, radius, width, fill } = shape;
      return [element('circle', { id: name, cx: x, cy: y, r: radius, fill: fills[fill], ...strokeOf(width) })];
    }
    case 'path': {
      const { path, width, fill, dash } = shape;
      return [element('path', { d: path, fill: fills[fill], ...strokeOf(width, dash) })];
    }
    case 'picture': {
      const { name, x, y, width, height } = shape;
      const href = pictures[name];
      return href ? [element('image', { x, y, width, height, href, preserveAspectRatio: 'none' })] : [];
    }
    case 'clip': {
      const { x, y, width, height, shapes } = shape;
      const box = { x, y, width, height, viewBox: [x, y, width, height].map(short).join(' '), overflow: 'hidden' };
      return [
        element(
          'svg',
          box,
          shapes.flatMap((each) => elementsOf(each, pictures)),
        ),
      ];
    }
  }
};

/**
 * A page as elements of SVG: one unit a millimetre, sized in millimetres, black on white.
 *
 * @param label what it is, for those who don't see it
 * @param pictures where the pictures are; one that is missing is left out
 */
export const svgTree = ({ widthMm, heightMm, shapes }: Page, label: string, pictures: PictureUrls = {}): SvgElement => {
  const paper = element('rect', { width: widthMm, height: heightMm, fill: '#fff' });
  const root = {
    width: `${short(widthMm)}mm`,
    height: `${short(heightMm)}mm`,
    viewBox: `0 0 ${short(widthMm)} ${short(heightMm)}`,
    role: 'img',
    'aria-label': label,
    'font-family': cardFamily,
    fill: '#000',
  };
  return element('svg', root, [paper, ...shapes.flatMap((shape) => elementsOf(shape, pictures))]);
};
