import { useEffect } from 'react';
import { createPortal } from 'react-dom';
import { paperSizes } from '../../../core/card/sheet/paper.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { PagePaper } from './PagePaper.tsx';

interface PrintedCardProps {
  readonly svgs: readonly string[];
  readonly paper: Setup['card']['paper'];
  /** Paper is done with, or was not wanted. */
  readonly onDone: () => void;
}

/** The card's pages for paper alone, at their true size; it asks the browser to print as soon as it is there. */
export const PrintedCard = ({ svgs, paper, onDone }: PrintedCardProps) => {
  useEffect(() => {
    window.addEventListener('afterprint', onDone);
    // one frame later the pages are drawn
    const frame = requestAnimationFrame(() => window.print());
    return () => {
      cancelAnimationFrame(frame);
      window.removeEventListener('afterprint', onDone);
    };
  }, [onDone]);
  const { widthMm, heightMm } = paperSizes[paper];
  return createPortal(
    <article className="print-sheet print-card">
      <style>{`@page { size: ${widthMm}mm ${heightMm}mm; margin: 0 }`}</style>
      {svgs.map((svg, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: pages without a life of their own
        <PagePaper key={i} svg={svg} />
      ))}
    </article>,
    document.body,
  );
};
