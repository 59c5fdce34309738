import type { Page } from './shapes.ts';
import { type SvgElement, svgTree } from './svg-tree.ts';

const escaped = (text: string): string =>
  text.replace(/[&<>"]/g, (sign) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[sign] as string);

const write = ({ tag, attributes, children }: SvgElement): string => {
  const start = Object.entries(attributes).reduce(
    (so, [name, value]) => `${so} ${name}="${escaped(value)}"`,
    `<${tag}`,
  );
  const inside = typeof children === 'string' ? escaped(children) : children.map(write).join('');
  return inside === '' ? `${start}/>` : `${start}>${inside}</${tag}>`;
};

/** A page without pictures as the text of an SVG file. */
export const svgOfPage = (page: Page, label: string): string => {
  const { tag, attributes, children } = svgTree(page, label);
  return write({ tag, attributes: { xmlns: 'http://www.w3.org/2000/svg', ...attributes }, children });
};
