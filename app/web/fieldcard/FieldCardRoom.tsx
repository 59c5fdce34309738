import { useCallback, useMemo, useState } from 'react';
import { cardText } from '../../../core/card/card-text.ts';
import { svgTree } from '../../../core/card/sheet/svg-tree.ts';
import type { PicturePngs } from '../../card/pdf-of-pages.ts';
import { canDrawPicture } from '../render/capability.ts';
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
import './field-card.css';

const able = canDrawPicture();

const urlOf = (png: Uint8Array): string =>
  `data:image/png;base64,${btoa(Array.from(png, (c) => String.fromCharCode(c)).join(''))}`;

const urlsOf = ({ lit, unlit }: PicturePngs) => ({
  ...(lit ? { lit: urlOf(lit) } : {}),
  ...(unlit ? { unlit: urlOf(unlit) } : {}),
});

const nothing: PicturePngs = {};

/** Why there is no card to see yet, in words. */
const waitWords = (font: string | null, hasFailed: boolean): string => {
  if (font !== null)
    return `The card could not be set: ${font}. Load the page again with a network; save your setup first.`;
  return hasFailed ? 'This setup could not be read, so it has no card yet.' : 'The card is being worked out…';
};

/** The field card as it will print, and what takes it out of the page. */
export const FieldCardRoom = () => {
  const setup = useSetup();
  const scheme = useScheme();
  const font = useCardFont();
  const hasFailed = useReports((state) => state.failed);
  const hidesAnswer = useSession((state) => state.hidesAnswer);
  const laidOut = useFieldCard(typeof font === 'string' ? null : font);
  const pictures = useCardPictures(setup, scheme) ?? nothing;
  const [isPrinting, setIsPrinting] = useState(false);
  const onDone = useCallback(() => setIsPrinting(false), []);
  const pages = useMemo(
    () =>
      laidOut?.pages.map((page, i) =>
        svgTree(
          page,
          `Field card of ${setup.name}, ${scheme.name}, page ${i + 1}; its words stand below as text`,
          urlsOf(pictures),
        ),
      ) ?? [],
    [laidOut, setup.name, scheme.name, pictures],
  );
  if (hidesAnswer) return <p className="quiet">Hidden until you have pointed.</p>;
  const names = { setup, scheme };
  const isComing = able && pictures === nothing;
  return (
    <section className="field-card" aria-label="Field card">
      <CardBar>
        <button type="button" disabled={!laidOut} onClick={() => setIsPrinting(true)}>
          Print
        </button>
        <button type="button" disabled={!laidOut} onClick={() => laidOut && void savePdf(laidOut, pictures, names)}>
          PDF
        </button>
        <button type="button" disabled={!laidOut} onClick={() => laidOut && savePlan(laidOut, names)}>
          Plan as SVG
        </button>
        <button type="button" id="card-on-phone" onClick={() => openNightRun('#card-on-phone')}>
          On the phone
        </button>
      </CardBar>
      <p className="quiet" role="status">
        {!laidOut
          ? waitWords(typeof font === 'string' ? font : null, hasFailed)
          : isComing
            ? 'Its pictures are being developed…'
            : able
              ? 'Print it at 100 %, black alone, on matt paper.'
              : 'This browser can’t draw the two pictures: the card comes without them.'}
      </p>
      {pages.map((page, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: pages without a life of their own
        <PagePaper key={i} page={page} />
      ))}
      {laidOut && (
        <details className="card-words">
          <summary>The card as text</summary>
          <pre>{cardText(laidOut.card)}</pre>
        </details>
      )}
      {isPrinting && laidOut && <PrintedCard pages={pages} paper={laidOut.card.paper} onDone={onDone} />}
    </section>
  );
};
