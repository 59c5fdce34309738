import { type ReactNode, useEffect, useId, useState } from 'react';
import type { About } from '../../../core/units/about.ts';
import { type Asked, aboutOf } from './about-texts.ts';
import { worded } from './lengths.ts';

/** The paragraph that unfolds: what it says, how it is worked out, and where that comes from. */
const WhyText = ({ id, asked }: { id: string; asked: Asked }) => {
  const [about, setAbout] = useState<About | 'lost' | null>(null);
  const key = JSON.stringify(asked);
  useEffect(() => {
    let isWanted = true;
    aboutOf(JSON.parse(key) as Asked).then(
      (found) => isWanted && setAbout(found ?? 'lost'),
      () => isWanted && setAbout('lost'),
    );
    return () => {
      isWanted = false;
    };
  }, [key]);
  return (
    <div id={id} className="why-text" role="note" aria-live="off">
      {about === null && <p>Coming…</p>}
      {about === 'lost' && <p>This text could not be loaded. Reload the page to try again.</p>}
      {about !== null && about !== 'lost' && (
        <>
          <p>{worded(about.says)}</p>
          <p>{worded(about.rule)}</p>
          <p>Source: {about.source}</p>
        </>
      )}
    </div>
  );
};

/**
 * The one way in which the page explains a number or a caution: a quiet button, its name with dots under it, and the text
 * that it unfolds, each to be put where it belongs.
 *
 * @param label what the button is called where its name alone does not tell it from others
 */
export const useWhy = (
  asked: Asked,
  name: ReactNode,
  label?: string,
): { readonly button: ReactNode; readonly text: ReactNode } => {
  const id = useId();
  const [isOpen, setIsOpen] = useState(false);
  const button = (
    <button
      type="button"
      className="why"
      title={isOpen ? 'Fold it up' : 'What this says, and where it comes from'}
      aria-label={label}
      aria-expanded={isOpen}
      {...(isOpen ? { 'aria-controls': id } : {})}
      onClick={() => setIsOpen(!isOpen)}
    >
      {name}
    </button>
  );
  return { button, text: isOpen ? <WhyText id={id} asked={asked} /> : null };
};
