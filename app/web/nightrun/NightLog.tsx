import { useEffect, useState } from 'react';
import type { FieldCard } from '../../../core/card/field-card.ts';
import type { Night } from '../../../core/card/tonight.ts';
import { useApp, useScheme, useSetup } from '../state/app-store.ts';
import { schemeFromNight } from '../state/edits/night-edits.ts';
import { useNightRun } from '../state/night-run.ts';
import { NightSlip } from './NightSlip.tsx';

/** Goes on from a night: a scheme as it was run, counted from the mark of the card that was run by. */
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
  useNightRun.setState({ isOpen: false });
  tell({ tone: 'done', text: 'A scheme with counts and places as they were run is beside the others.' });
};

/** The log: what was done on which night, the latest first. */
export const NightLog = ({ card }: { card: FieldCard | null }) => {
  const { nights, schemes } = useSetup();
  const scheme = useScheme();
  const count = useApp((state) => state.history.future.length);
  const [last, setLast] = useState(nights.length);
  const [wanted, setWanted] = useState<Night | null>(null);
  const { chooseScheme, undo } = useApp.getState();
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
  const isDeleted = nights.length < last && count === 0;
  return (
    <div className="night-log">
      {isDeleted && (
        <p role="status">
          Deleted.{' '}
          <button
            type="button"
            onClick={() => {
              undo();
              setLast(nights.length + 1);
            }}
          >
            Undo
          </button>
        </p>
      )}
      {nights.length === 0 && <p className="quiet">Nothing yet. What you tap while you run it tonight is kept here.</p>}
      {nights.toReversed().map((night) => (
        <NightSlip key={night.id} night={night} onStart={() => start(night)} />
      ))}
    </div>
  );
};
