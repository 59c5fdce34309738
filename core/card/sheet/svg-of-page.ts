import { millimetresPerPoint } from './paper.ts';
import type { Page, PictureName, Shape } from './shapes.ts';

/** The typeface of the card and what stands in for it. */
export const cardFamily = 'Field Card, Atkinson Hyperlegible Next, Atkinson Hyperlegible Next Variable, sans-serif';

const escaped = (text: string): string =>
  text.replace(/[&<>"]/g, (sign) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[sign] as string);

const short = (value: number): string => String(Number(value.toFixed(3)));

/** Attributes of an element, those that are undefined left out. */
const attributes = (values: Readonly<Record<string, string | number | undefined>>): string =>
  Object.entries(values)
    .flatMap(([name, value]) =>
      value === undefined ? [] : [` ${name}="${typeof value === 'number' ? short(value) : escaped(value)}"`],
    )
    .join('');

const strokeOf = (width: number, dash?: readonly [number, number]) => ({
  stroke: width > 0 ? '#000' : 'none',
  'stroke-width': width > 0 ? width : undefined,
  'stroke-dasharray': dash?.join(' '),
});
const fills = { none: 'none', white: '#fff', black: '#000' } as const;
const anchors = { start: undefined, middle: 'middle', end: 'end' } as const;

type PictureUrls = Partial<Record<PictureName, string>>;

const textOf = ({ text, style, anchor, x, y, hasRim }: Extract<Shape, { kind: 'text' }>): string => {
  const rim = hasRim
    ? { stroke: '#fff', 'stroke-width': 0.9, 'paint-order': 'stroke', 'stroke-linejoin': 'round' }
    : {};
  const size = style.points * millimetresPerPoint;
  const own = { x, y, 'font-size': size, 'font-weight': style.weight, 'text-anchor': anchors[anchor], ...rim };
  return `<text${attributes(own)}>${escaped(text)}</text>`;
};

const elementOf = (shape: Shape, pictures: PictureUrls): string => {
  switch (shape.kind) {
    case 'text':
      return textOf(shape);
    case 'line': {
      const { name, x1, y1, x2, y2, width, dash } = shape;
      return `<line${attributes({ id: name, x1, y1, x2, y2, ...strokeOf(width, dash) })}/>`;
    }
    case 'circle': {
      const { name, x, y, radius, width, fill } = shape;
      return `<circle${attributes({ id: name, cx: x, cy: y, r: radius, fill: fills[fill], ...strokeOf(width) })}/>`;
    }
    case 'path': {
      const { path, width, fill, dash } = shape;
      return `<path${attributes({ d: path, fill: fills[fill], ...strokeOf(width, dash) })}/>`;
    }
    case 'picture': {
      const { name, x, y, width, height } = shape;
      const href = pictures[name];
      return href ? `<image${attributes({ x, y, width, height, href, preserveAspectRatio: 'none' })}/>` : '';
    }
    case 'clip': {
      const { x, y, width, height, shapes } = shape;
      const box = { x, y, width, height, viewBox: [x, y, width, height].map(short).join(' '), overflow: 'hidden' };
      return `<svg${attributes(box)}>${shapes.map((each) => elementOf(each, pictures)).join('')}</svg>`;
    }
  }
};

/**
 * A page as SVG: one unit a millimetre, sized in millimetres, black on white.
 *
 * @param label what it is, for those who don't see it
 * @param pictures where the pictures are; one that is missing is left out
 */
export const svgOfPage = ({ widthMm, heightMm, shapes }: Page, label: string, pictures: PictureUrls = {}): string => {
  const root = {
    xmlns: 'http://www.w3.org/2000/svg',
    width: `${short(widthMm)}mm`,
    height: `${short(heightMm)}mm`,
    viewBox: `0 0 ${short(widthMm)} ${short(heightMm)}`,
    role: 'img',
    'aria-label': label,
    'font-family': cardFamily,
    fill: '#000',
  };
  const paper = `<rect${attributes({ width: widthMm, height: heightMm, fill: '#fff' })}/>`;
  return `<svg${attributes(root)}>${paper}${shapes.map((shape) => elementOf(shape, pictures)).join('')}</svg>`;
};
