import { useEffect, useRef, useState } from 'react';
import type { FieldCard } from '../../../core/card/field-card.ts';
import type { Night, Setup } from '../../../core/setup/schema/setup.ts';
import { useApp, useScheme, useSetup } from '../state/app-store.ts';
import { deleteNight, schemeFromNight } from '../state/edits/night-edits.ts';
import { leaveNightRun, stepBack } from '../state/night-pages.ts';
import { NightSlip, nightHeadingId } from './NightSlip.tsx';

/** Goes on from a night: a scheme as it was run, counted from the mark that the scheme’s card has now. */
const startFrom = (night: Night, { mark }: FieldCard): void => {
  const { edit, chooseScheme, tell } = useApp.getState();
  let made: string | null = null;
  edit((s) => {
    const copy = schemeFromNight(s, night, mark.place);
    made = copy.schemeId;
    return copy.setup;
  });
  if (made === null) return;
  chooseScheme(made);
  leaveNightRun();
  tell({ tone: 'done', text: 'A scheme with counts and places as they were run is beside the others.' });
};

/** The log: what was done on which night, the latest first. */
export const NightLog = ({ card }: { card: FieldCard | null }) => {
  const setup = useSetup();
  const { nights, schemes } = setup;
  const scheme = useScheme();
  /** The setup right after a night was deleted: as long as nothing else is done, that can be taken back here. */
  const [afterDeletion, setAfterDeletion] = useState<Setup | null>(null);
  const [wanted, setWanted] = useState<Night | null>(null);
  const { chooseScheme, edit, undo } = useApp.getState();
  useEffect(() => {
    // its card comes a moment after its scheme was chosen
    if (!wanted || wanted.schemeId !== scheme.id || !card) return;
    setWanted(null);
    startFrom(wanted, card);
  }, [wanted, scheme.id, card]);
  const start = (night: Night) => {
    if (schemes.some(({ id }) => id === night.schemeId)) chooseScheme(night.schemeId);
    else useApp.getState().tell({ tone: 'problem', text: 'The scheme of that night is not in this setup any more.' });
    setWanted(night);
  };
  const heading = useRef<HTMLHeadingElement>(null);
  /** The night to be focused once it is drawn; "" = the heading of all. */
  const [focused, setFocused] = useState<{ readonly id: string } | null>(null);
  useEffect(() => {
    if (focused) (document.getElementById(nightHeadingId(focused)) ?? heading.current)?.focus();
  }, [focused]);
  const remove = (id: string) => {
    const shown = nights.toReversed();
    const next = shown[shown.findIndex((night) => night.id === id) + 1];
    edit((s) => deleteNight(s, id));
    setAfterDeletion(useApp.getState().history.present);
    setFocused({ id: next?.id ?? '' });
  };
  const restore = () => {
    undo();
    setFocused({ id: '' });
  };
  return (
    <div className="night-log">
      <h2 ref={heading} tabIndex={-1}>
        Nights
      </h2>
      {afterDeletion === setup && (
        <p role="status">
          Deleted.{' '}
          <button type="button" onClick={restore}>
            Undo
          </button>
        </p>
      )}
      {nights.length === 0 && (
        <p className="empty">
          <span>Nothing yet. What you tap while you run it tonight is kept here.</span>{' '}
          <button type="button" onClick={stepBack}>
            Run it tonight
          </button>
        </p>
      )}
      {nights.toReversed().map((night) => (
        <NightSlip
          key={night.id}
          night={night}
          card={night.schemeId === scheme.id ? card : null}
          onStart={() => start(night)}
          onDelete={() => remove(night.id)}
        />
      ))}
    </div>
  );
};
