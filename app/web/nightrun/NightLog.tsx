import { useEffect, useState } from 'react';
import type { FieldCard } from '../../../core/card/field-card.ts';
import type { Night } from '../../../core/card/tonight.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { useApp, useScheme, useSetup } from '../state/app-store.ts';
import { deleteNight, schemeFromNight } from '../state/edits/night-edits.ts';
import { useNightRun } from '../state/night-run.ts';
import { NightSlip } from './NightSlip.tsx';

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
  useNightRun.setState({ isOpen: false });
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
  const remove = (id: string) => {
    edit((s) => deleteNight(s, id));
    setAfterDeletion(useApp.getState().history.present);
  };
  return (
    <div className="night-log">
      {afterDeletion === setup && (
        <p role="status">
          Deleted.{' '}
          <button type="button" onClick={undo}>
            Undo
          </button>
        </p>
      )}
      {nights.length === 0 && <p className="quiet">Nothing yet. What you tap while you run it tonight is kept here.</p>}
      {nights.toReversed().map((night) => (
        <NightSlip key={night.id} night={night} onStart={() => start(night)} onDelete={() => remove(night.id)} />
      ))}
    </div>
  );
};
