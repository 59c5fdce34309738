import { useEffect } from 'react';
import { createPortal } from 'react-dom';
import { paperSizes } from '../../../core/card/sheet/paper.ts';
import type { SvgElement } from '../../../core/card/sheet/svg-tree.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { PagePaper } from './PagePaper.tsx';

interface PrintedCardProps {
  readonly pages: readonly SvgElement[];
  readonly paper: Setup['card']['paper'];
  /** Paper is done with, or was not wanted. */
  readonly onDone: () => void;
}

/** The card's pages for paper alone, at their true size; it asks the browser to print as soon as it is there. */
export const PrintedCard = ({ pages, paper, onDone }: PrintedCardProps) => {
  const { widthMm, heightMm } = paperSizes[paper];
  useEffect(() => {
    // the page’s policy lets no style element pass; a sheet made so is the program’s own
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(`@page { size: ${widthMm}mm ${heightMm}mm; margin: 0 }`);
    document.adoptedStyleSheets.push(sheet);
    return () => {
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((other) => other !== sheet);
    };
  }, [widthMm, heightMm]);
  useEffect(() => {
    window.addEventListener('afterprint', onDone);
    // one frame later the pages are drawn
    const frame = requestAnimationFrame(() => window.print());
    return () => {
      cancelAnimationFrame(frame);
      window.removeEventListener('afterprint', onDone);
    };
  }, [onDone]);
  return createPortal(
    <article className="print-sheet print-card">
      {pages.map((page, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: pages without a life of their own
        <PagePaper key={i} page={page} />
      ))}
    </article>,
    document.body,
  );
};
