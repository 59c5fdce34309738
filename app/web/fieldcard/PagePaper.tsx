import { useEffect, useRef } from 'react';
import { parseDrawing } from '../ui/parse-drawing.ts';

/** One page of the card, drawn as the vectors that it is; its words can be selected. */
export const PagePaper = ({ svg }: { svg: string }) => {
  const ref = useRef<HTMLDivElement>(null);
  useEffect(() => {
    ref.current?.replaceChildren(document.importNode(parseDrawing(svg), true));
  }, [svg]);
  return <div ref={ref} className="card-paper" />;
};
