import { useEffect, useRef } from 'react';

/** One page of the card, drawn as the vectors that it is; its words can be selected. */
export const PagePaper = ({ svg }: { svg: string }) => {
  const ref = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const drawing = new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement;
    ref.current?.replaceChildren(document.importNode(drawing, true));
  }, [svg]);
  return <div ref={ref} className="card-paper" />;
};
