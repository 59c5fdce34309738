import { footMetres } from '../../../core/units/feet.ts';
import { useApp, useSetup } from '../state/app-store.ts';
import { setWalking } from '../state/edits/walking-edits.ts';
import { NumberField } from '../ui/NumberField.tsx';
import { parseFeet } from './parse-feet.ts';

/** How long a pace is, in the lengths of the card. */
export const PaceField = () => {
  const { card, walking } = useSetup();
  const set = (paceMetres: number) => useApp.getState().edit((s) => setWalking(s, { paceMetres }));
  return card.lengths === 'feet' ? (
    <NumberField
      label="One pace"
      unit="ft"
      value={Number((walking.paceMetres / footMetres).toFixed(2))}
      min={1}
      max={4.9}
      step={0.1}
      parse={parseFeet}
      onChange={(feet) => set(Number((feet * footMetres).toFixed(4)))}
    />
  ) : (
    <NumberField label="One pace" unit="m" value={walking.paceMetres} min={0.3} max={1.5} step={0.05} onChange={set} />
  );
};
