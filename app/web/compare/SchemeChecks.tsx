import { useApp, useSetup } from '../state/app-store.ts';
import { mostCompared, useComparedSchemes, useSession } from '../state/session.ts';
import { Check } from '../ui/Check.tsx';
import { Drop } from '../ui/Drop.tsx';

/** Which schemes stand side by side. */
export const SchemeChecks = () => {
  const { schemes } = useSetup();
  const compared = useComparedSchemes();
  const { set } = useSession.getState();
  const { tell } = useApp.getState();
  const chosen = compared.map(({ id }) => id);
  const choose = (id: string, isOn: boolean) => {
    const next = isOn ? [...chosen, id] : chosen.filter((each) => each !== id);
    if (next.length > mostCompared)
      tell({ tone: 'problem', text: `${mostCompared} schemes at most stand side by side. Take one away first.` });
    else if (next.length > 0) set({ comparedIds: next });
  };
  return (
    <Drop label={`Schemes ${chosen.length}/${schemes.length}`}>
      {schemes.map(({ id, name }) => (
        <Check key={id} label={name} isOn={chosen.includes(id)} onChange={(isOn) => choose(id, isOn)} />
      ))}
      <p className="quiet">Two to {mostCompared}, in the order of the tabs.</p>
    </Drop>
  );
};
