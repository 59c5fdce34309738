import { useEffect, useRef } from 'react';
import type { SvgElement } from '../../../core/card/sheet/svg-tree.ts';

const drawn = ({ tag, attributes, children }: SvgElement): SVGElement => {
  const element = document.createElementNS('http://www.w3.org/2000/svg', tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  element.append(...(typeof children === 'string' ? [children] : children.map(drawn)));
  return element;
};

/** One page of the card, drawn as the vectors that it is; its words can be selected. */
export const PagePaper = ({ page }: { page: SvgElement }) => {
  const ref = useRef<HTMLDivElement>(null);
  useEffect(() => ref.current?.replaceChildren(drawn(page)), [page]);
  return <div ref={ref} className="card-paper" />;
};
