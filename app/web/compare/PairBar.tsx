import { useSession } from '../state/session.ts';
import { Choice } from '../ui/Choice.tsx';
import type { PairOfSides } from './use-pair.ts';

/** Which two pictures are laid over each other. Choosing one for both sides swaps them. */
export const PairBar = ({ kind, pair: { a, b, options } }: { kind: 'wipe' | 'difference'; pair: PairOfSides }) => {
  const { set } = useSession.getState();
  const choose = (first: string, second: string) => set({ pair: { kind, a: first, b: second } });
  return (
    <div className="pair-bar">
      <Choice label="A" value={a.id} options={options} onChange={(id) => choose(id, id === b.id ? a.id : b.id)} />
      <Choice label="B" value={b.id} options={options} onChange={(id) => choose(id === a.id ? b.id : a.id, id)} />
    </div>
  );
};
