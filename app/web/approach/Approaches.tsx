import { useEffect, useRef, useState } from 'react';
import type { Strategy } from '../../../core/readings/strategy-frames.ts';
import type { Scheme } from '../../../core/setup/schema/setup.ts';
import { useApp, useScheme } from '../state/app-store.ts';
import { useSchemeAtRest, useSetupAtRest } from '../state/at-rest.ts';
import { lightBy } from '../state/edits/light-by.ts';
import { retryPlans, usePlans, wantPlans } from '../state/plans.ts';
import { PlanRow } from './PlanRow.tsx';
import { strategyNames } from './plan-words.ts';

const take = (schemeId: string, strategy: Strategy): void => {
  const { edit, chooseScheme, chooseFrame, showBlend } = useApp.getState();
  let made = schemeId;
  edit((setup) => {
    const lit = lightBy(setup, schemeId, strategy);
    made = lit.schemeId;
    return lit.setup;
  });
  chooseScheme(made);
  const lit = useApp.getState().history.present.schemes.find(({ id }) => id === made);
  const [only, ...others] = lit?.frames ?? [];
  if (others.length > 0) showBlend();
  else if (only) chooseFrame(only.id);
};

const Rows = () => {
  const [setup, scheme] = [useSetupAtRest(), useSchemeAtRest()];
  const { plans, isOld, failed } = usePlans(setup, scheme);
  const list = useRef<HTMLUListElement>(null);
  useEffect(() => wantPlans(setup, scheme.id), [setup, scheme.id]);
  const isThere = plans !== null;
  // near the page's lower end it would open out of sight; its heading stays with it
  useEffect(() => {
    if (isThere) list.current?.parentElement?.scrollIntoView({ block: 'nearest' });
  }, [isThere]);
  if (!plans)
    return (
      <p className="quiet" role="status">
        {failed ? 'That could not be worked out. ' : 'Working it out …'}
        {failed && (
          <button type="button" className="small" onClick={retryPlans}>
            Try again
          </button>
        )}
      </p>
    );
  return (
    <ul className="approach-list" ref={list} aria-busy={isOld}>
      {strategyNames.flatMap(([strategy, name, what]) => {
        const plan = plans.find((each) => each.strategy === strategy);
        return plan
          ? [<PlanRow key={strategy} name={name} what={what} plan={plan} onTake={() => take(scheme.id, strategy)} />]
          : [];
      })}
    </ul>
  );
};

/** What the present scheme comes nearest to: where its lamps are lit, and by whom. */
const presentWay = ({ frames }: Scheme): string => {
  const lit = frames.filter(({ passes }) => passes.length > 0);
  const isOne = frames.length === 1;
  const isDim = lit.every(({ seconds, passes }) =>
    passes.every(({ held, on, off }) => held === 'stand' && off - on >= seconds),
  );
  if (isOne) return isDim ? 'standing lights' : 'one frame';
  return lit.every(({ purpose }) => purpose === 'sky') ? 'in the sky frame' : 'painted frames';
};

/** How the lamps of the present scheme could be exposed, three ways, with what each would give before one is made. */
export const Approaches = () => {
  const scheme = useScheme();
  const [isOpen, setIsOpen] = useState(false);
  if (!scheme.frames.some(({ passes }) => passes.length > 0)) return null;
  return (
    <section className="approaches" aria-label="How to light it">
      <button type="button" className="unfold" aria-expanded={isOpen} onClick={() => setIsOpen(!isOpen)}>
        How to light it: <strong>{presentWay(scheme)}</strong>
      </button>
      {isOpen && <Rows />}
    </section>
  );
};
