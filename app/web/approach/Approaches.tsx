import { useEffect, useRef, useState } from 'react';
import type { Strategy } from '../../../core/readings/strategy-frames.ts';
import { type StrategyPlan, strategyPlan } from '../../../core/readings/strategy-plan.ts';
import type { Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { useApp, useScheme, useSetup } from '../state/app-store.ts';
import { lightBy } from '../state/edits/light-by.ts';
import { PlanRow } from './PlanRow.tsx';
import { strategyNames } from './plan-words.ts';

interface Plans {
  readonly setup: Setup;
  readonly scheme: Scheme;
  readonly plans: readonly StrategyPlan[];
}

/** The strategies for what is on screen, worked out when asked for; they hold still under a hand that drags. */
const usePlans = (): readonly StrategyPlan[] => {
  const [setup, scheme] = [useSetup(), useScheme()];
  const isDragging = useApp((state) => state.history.gestureStart !== null);
  const kept = useRef<Plans | null>(null);
  const isStale = kept.current?.setup !== setup || kept.current.scheme !== scheme;
  if (!kept.current || (isStale && !isDragging))
    kept.current = { setup, scheme, plans: strategyNames.map(([strategy]) => strategyPlan(setup, scheme, strategy)) };
  return kept.current.plans;
};

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
  const scheme = useScheme();
  const plans = usePlans();
  const list = useRef<HTMLUListElement>(null);
  // near the page's lower end it would open out of sight
  useEffect(() => {
    list.current?.scrollIntoView({ block: 'nearest' });
  }, []);
  return (
    <ul className="approach-list" ref={list}>
      {strategyNames.map(([strategy, name, what], i) => (
        <PlanRow
          key={strategy}
          name={name}
          what={what}
          plan={plans[i] as StrategyPlan}
          onTake={() => take(scheme.id, strategy)}
        />
      ))}
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
      <button type="button" className="blend-toggle" aria-expanded={isOpen} onClick={() => setIsOpen(!isOpen)}>
        How to light it: <strong>{presentWay(scheme)}</strong>
      </button>
      {isOpen && <Rows />}
    </section>
  );
};
