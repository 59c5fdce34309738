import type { ReactNode } from 'react';
import { useApp, useSetup } from '../state/app-store.ts';
import { setCard } from '../state/edits/card-edits.ts';
import { setWalking } from '../state/edits/walking-edits.ts';
import { Choice } from '../ui/Choice.tsx';
import { NumberField } from '../ui/NumberField.tsx';
import { TextField } from '../ui/TextField.tsx';

/** How the card is written: paper, lengths, pace and permission; beside them what takes it out of the page. */
export const CardBar = ({ children }: { children: ReactNode }) => {
  const { card, walking } = useSetup();
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
      <NumberField
        label="One pace"
        unit="m"
        value={walking.paceMetres}
        min={0.3}
        max={1.5}
        step={0.05}
        onChange={(to) => edit((s) => setWalking(s, { paceMetres: to }))}
      />
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
