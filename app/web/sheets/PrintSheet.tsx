import { useEffect, useMemo, useRef } from 'react';
import { createPortal } from 'react-dom';
import { LevelKey } from '../picture/LevelKey.tsx';
import { MiniPlan } from '../ui/MiniPlan.tsx';
import type { Sheet, SheetCell } from './sheet.ts';

/** About how wide a plan comes out on paper, in CSS pixels. */
const planPixels = 130;

const PrintedCell = ({ cell, picture }: { cell: SheetCell; picture: HTMLCanvasElement | undefined }) => {
  const source = useMemo(() => picture?.toDataURL('image/png'), [picture]);
  return (
    <figure>
      <figcaption>{cell.name}</figcaption>
      {source && <img src={source} alt={`Picture: ${cell.name}`} />}
      <div className="print-under">
        {cell.plan && (
          <div className="print-plan">
            <MiniPlan {...cell.plan} colouring="paper" sizePixels={planPixels} />
          </div>
        )}
        <ul>
          {cell.lines.map((line, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: lines without a life of their own
            <li key={i}>{line}</li>
          ))}
        </ul>
      </div>
    </figure>
  );
};

interface PrintSheetProps {
  readonly sheet: Sheet;
  readonly pictures: ReadonlyMap<string, HTMLCanvasElement>;
  /** Paper is done with, or was not wanted. */
  readonly onDone: () => void;
}

/** A sheet as a page of its own that only paper shows; it asks the browser to print as soon as its pictures are there. */
export const PrintSheet = ({ sheet, pictures, onDone }: PrintSheetProps) => {
  const ref = useRef<HTMLElement>(null);
  useEffect(() => {
    let isHere = true;
    const images = [...(ref.current?.querySelectorAll('img') ?? [])];
    window.addEventListener('afterprint', onDone);
    void Promise.all(images.map((image) => image.decode().catch(() => undefined))).then(() => {
      if (isHere) window.print();
    });
    return () => {
      isHere = false;
      window.removeEventListener('afterprint', onDone);
    };
  }, [onDone]);
  return createPortal(
    <article ref={ref} className="print-sheet" style={{ '--columns': sheet.columns } as React.CSSProperties}>
      <h1>{sheet.title}</h1>
      <p>{sheet.subtitle}</p>
      {sheet.hasLevelKey && <LevelKey of="levels" words="stops from mid-grey" />}
      {sheet.groups.map(({ name, cells }) => (
        <section key={cells[0]?.picture.screen}>
          {name && <h2>{name}</h2>}
          <div className="print-cells">
            {cells.map((cell) => (
              <PrintedCell key={cell.picture.screen} cell={cell} picture={pictures.get(cell.picture.screen)} />
            ))}
          </div>
        </section>
      ))}
    </article>,
    document.body,
  );
};
