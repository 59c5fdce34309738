import { planPage } from '../../../core/card/plan/draw-plan.ts';
import { svgOfPage } from '../../../core/card/sheet/svg-of-page.ts';
import type { Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import type { PicturePngs } from '../../card/pdf-of-pages.ts';
import { useApp } from '../state/app-store.ts';
import { download } from '../ui/download.ts';
import { fileStem } from '../ui/file-stem.ts';
import { loadPdf } from './late-files.ts';
import type { LaidOutCard } from './use-field-card.ts';

interface Names {
  readonly setup: Setup;
  readonly scheme: Scheme;
}

const stem = ({ setup, scheme }: Names): string => `${fileStem(setup)}-${fileStem(scheme)}`;

const done = (name: string) => useApp.getState().tell({ tone: 'done', text: `Saved as ${name}` });

/** Hands the card to the browser as a PDF. */
export const savePdf = async (laidOut: LaidOutCard, pictures: PicturePngs | null, names: Names): Promise<void> => {
  try {
    const { pdfOfPages } = await loadPdf();
    const title = `Field card: ${names.setup.name}, ${names.scheme.name}`;
    const bytes = await pdfOfPages(laidOut.layOut(pictures !== null), title, laidOut.font, pictures ?? {});
    const name = `${stem(names)}-card.pdf`;
    download(new Blob([bytes.slice()], { type: 'application/pdf' }), name);
    done(name);
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    useApp.getState().tell({ tone: 'problem', text: `The PDF could not be made: ${why}. Print the card instead.` });
  }
};

/** Hands the plan alone to the browser as SVG. */
export const savePlan = ({ card, plan }: LaidOutCard, names: Names): void => {
  const svg = svgOfPage(planPage(card, plan), `Plan of ${names.setup.name}, ${names.scheme.name}`);
  const name = `${stem(names)}-plan.svg`;
  download(new Blob([svg], { type: 'image/svg+xml' }), name);
  done(name);
};
