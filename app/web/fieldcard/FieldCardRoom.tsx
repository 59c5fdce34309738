import { useMemo } from 'react';
import { cardText } from '../../../core/card/card-text.ts';
import { svgTree } from '../../../core/card/sheet/svg-tree.ts';
import type { PicturePngs } from '../../card/pdf-of-pages.ts';
import { Empty } from '../frames/Empty.tsx';
import { useScheme, useSetup } from '../state/app-store.ts';
import { openNightRun } from '../state/night-pages.ts';
import { useReports } from '../state/reports.ts';
import { useSession } from '../state/session.ts';
import { CardBar } from './CardBar.tsx';
import { PagePaper } from './PagePaper.tsx';
import { PrintedCard } from './PrintedCard.tsx';
import { savePdf, savePlan } from './take-out.ts';
import { useCardPictures } from './use-card-pictures.ts';
import { useCardFont, useFieldCard } from './use-field-card.ts';
import { useWhenReady, type Wanted } from './use-when-ready.ts';
import './field-card.css';

const urlOf = (png: Uint8Array): string =>
  `data:image/png;base64,${btoa(Array.from(png, (c) => String.fromCharCode(c)).join(''))}`;

const urlsOf = ({ lit, unlit }: PicturePngs) => ({
  ...(lit ? { lit: urlOf(lit) } : {}),
  ...(unlit ? { unlit: urlOf(unlit) } : {}),
});

/** Why there is no card to see yet, in words. */
const waitWords = (font: string | null, hasFailed: boolean): string => {
  if (font !== null)
    return `The card could not be set: ${font}. Load the page again with a network; save your setup first.`;
  return hasFailed ? 'This setup could not be read, so it has no card yet.' : 'The card is being worked out…';
};

interface CardState {
  readonly wanted: Wanted | null;
  readonly isComing: boolean;
  readonly hasPictures: boolean;
}

/** What there is to say of a card that is there. */
const stateWords = ({ wanted, isComing, hasPictures }: CardState): string => {
  if (wanted)
    return `${wanted === 'pdf' ? 'The PDF' : 'The print'} comes by itself when the two pictures are developed…`;
  if (isComing) return 'Its pictures are being developed…';
  if (hasPictures) return 'Print it at 100 %, black alone, on matt paper.';
  return 'Its two pictures could not be drawn: the card comes without them.';
};

/** The field card as it will print, and what takes it out of the page. */
export const FieldCardRoom = () => {
  const setup = useSetup();
  const scheme = useScheme();
  const font = useCardFont();
  const hasFailed = useReports((state) => state.failed);
  const hidesAnswer = useSession((state) => state.hidesAnswer);
  const laidOut = useFieldCard(typeof font === 'string' ? null : font);
  const { pngs, isComing } = useCardPictures(setup, scheme);
  const label = `Field card of ${setup.name}, ${scheme.name}`;
  const { shown, printed } = useMemo(() => {
    const treesOf = (hasPictures: boolean) =>
      laidOut
        ?.layOut(hasPictures)
        .map((page, i) =>
          svgTree(page, `${label}, page ${i + 1}; its words stand below as text`, pngs ? urlsOf(pngs) : {}),
        ) ?? [];
    // what is on its way has its place on screen, and no empty box on paper
    const screen = treesOf(pngs !== null || isComing);
    return { shown: screen, printed: isComing ? treesOf(false) : screen };
  }, [laidOut, label, pngs, isComing]);
  const take = (what: Wanted) => {
    if (!laidOut) return;
    if (what === 'pdf') void savePdf(laidOut, isComing ? null : pngs, { setup, scheme });
    // one frame later the pages are drawn
    else requestAnimationFrame(() => window.print());
  };
  const { wanted, ask } = useWhenReady(isComing, take);
  if (hidesAnswer) return <p className="quiet">Hidden until you have pointed.</p>;
  return (
    <section className="field-card" aria-label="Field card">
      <CardBar>
        <button type="button" disabled={!laidOut} onClick={() => ask('print')}>
          {wanted === 'print' ? 'Print now, without pictures' : 'Print'}
        </button>
        <button type="button" disabled={!laidOut} onClick={() => ask('pdf')}>
          {wanted === 'pdf' ? 'PDF now, without pictures' : 'PDF'}
        </button>
        <button type="button" disabled={!laidOut} onClick={() => laidOut && savePlan(laidOut, { setup, scheme })}>
          Plan as SVG
        </button>
        <button type="button" id="card-on-phone" onClick={() => openNightRun('#card-on-phone')}>
          On the phone
        </button>
      </CardBar>
      <p className="quiet" role="status">
        {laidOut
          ? stateWords({ wanted, isComing, hasPictures: pngs !== null })
          : waitWords(typeof font === 'string' ? font : null, hasFailed)}
      </p>
      {laidOut && (
        <p className="quiet">
          Clock and paces of every row count from one mark
          {laidOut.card.mark.subjectName ? `, at “${laidOut.card.mark.subjectName}”` : ', where the camera looks'}: one
          place to pace from. The slips count from what each pass is aimed at.
        </p>
      )}
      {laidOut?.card.rows.length === 0 && (
        <Empty lacks="lamp">The card has a row for each lamp that you count, and this scheme has none yet.</Empty>
      )}
      {shown.map((page, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: pages without a life of their own
        <PagePaper key={i} page={page} />
      ))}
      {laidOut && (
        <details className="card-words">
          <summary>The card as text</summary>
          <pre>{cardText(laidOut.card)}</pre>
        </details>
      )}
      {laidOut && <PrintedCard pages={printed} paper={laidOut.card.paper} />}
    </section>
  );
};
