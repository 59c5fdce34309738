import { Fragment, useState } from 'react';
import { useSetup } from '../state/app-store.ts';
import { mostCompared } from '../state/compared-schemes.ts';
import { useComparedSchemes } from '../state/schemes-on-screen.ts';
import { useSession } from '../state/session.ts';
import { Check } from '../ui/Check.tsx';
import { Drop } from '../ui/Drop.tsx';

/** Which schemes stand side by side. */
export const SchemeChecks = () => {
  const { schemes } = useSetup();
  const compared = useComparedSchemes();
  const { set } = useSession.getState();
  // said where it was pressed: the list may be long
  const [refusedId, setRefusedId] = useState<string | null>(null);
  const chosen = compared.map(({ id }) => id);
  const choose = (id: string, isOn: boolean) => {
    const next = isOn ? [...chosen, id] : chosen.filter((each) => each !== id);
    const isTooMany = next.length > mostCompared;
    setRefusedId(isTooMany ? id : null);
    if (!isTooMany && next.length > 0) set({ comparedIds: next });
  };
  return (
    <Drop label={`Schemes ${chosen.length}/${schemes.length}`} onToggle={() => setRefusedId(null)}>
      {schemes.map(({ id, name }) => (
        <Fragment key={id}>
          <Check label={name} isOn={chosen.includes(id)} onChange={(isOn) => choose(id, isOn)} />
          {id === refusedId && (
            <p role="alert">{mostCompared} schemes at most stand side by side. Take one away first.</p>
          )}
        </Fragment>
      ))}
      <p className="quiet">Two to {mostCompared}, in the order of the tabs.</p>
    </Drop>
  );
};
