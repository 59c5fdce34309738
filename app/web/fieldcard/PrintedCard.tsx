import { useEffect } from 'react';
import { createPortal } from 'react-dom';
import { paperSizes } from '../../../core/card/sheet/paper.ts';
import type { SvgElement } from '../../../core/card/sheet/svg-tree.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { PagePaper } from './PagePaper.tsx';

interface PrintedCardProps {
  readonly pages: readonly SvgElement[];
  readonly paper: Setup['card']['paper'];
}

/** The card’s pages for paper alone, at their true size: what the browser prints while they are there, however it is asked. */
export const PrintedCard = ({ pages, paper }: PrintedCardProps) => {
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
