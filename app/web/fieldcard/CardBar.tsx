import type { ReactNode } from 'react';
import { useApp, useSetup } from '../state/app-store.ts';
import { setCard } from '../state/edits/card-edits.ts';
import { Choice } from '../ui/Choice.tsx';
import { TextField } from '../ui/TextField.tsx';
import { PaceField } from './PaceField.tsx';

/** How the card is written: paper, lengths, pace and permission; beside them what takes it out of the page. */
export const CardBar = ({ children }: { children: ReactNode }) => {
  const { card } = useSetup();
  const { edit } = useApp.getState();
  return (
    <div className="card-bar">
      <Choice
        label="Paper"
        value={card.paper}
        options={[
          ['a4', 'A4'],
          ['letter', 'Letter'],
        ]}
        onChange={(to) => edit((s) => setCard(s, { paper: to === 'letter' ? 'letter' : 'a4' }))}
      />
      <Choice
        label="Lengths"
        value={card.lengths}
        options={[
          ['metres', 'metres'],
          ['feet', 'feet'],
        ]}
        onChange={(to) => edit((s) => setCard(s, { lengths: to === 'feet' ? 'feet' : 'metres' }))}
      />
      <PaceField />
      <TextField
        label="Permission"
        value={card.permission}
        longest={160}
        mayBeEmpty
        onChange={(to) => edit((s) => setCard(s, { permission: to }))}
      />
      <div className="choices">{children}</div>
    </div>
  );
};
