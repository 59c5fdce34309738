import { create } from 'zustand';
import type { StrategyPlan } from '../../../core/readings/strategy-plan.ts';
import type { Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import type { PlansAnswer, PlansRequest } from '../workers/plans-messages.ts';
import { withoutKnownFiles } from '../workers/request-parts.ts';
import { useApp } from './app-store.ts';
import { askedWorker } from './asked-worker.ts';
import { documentKeyOf } from './document-key.ts';
import { stageKeyOf } from './stage-key.ts';

/** What plans are worked out of. */
interface Wanted {
  readonly documentKey: string;
  readonly setup: Setup;
  readonly schemeId: string;
}

/** Ways to light a scheme as last worked out, and of what. They trail the setup by a few tenths of a second. */
const usePlansStore = create<{ readonly of: Wanted | null; readonly plans: readonly StrategyPlan[]; failed: boolean }>(
  () => ({ of: null, plans: [], failed: false }),
);

/** The ways to light a scheme; null until they are there. `isOld` while those for what is on screen are worked out. */
export const usePlans = (
  setup: Setup,
  scheme: Scheme,
): { readonly plans: readonly StrategyPlan[] | null; readonly isOld: boolean; readonly failed: boolean } => {
  const { of, plans, failed } = usePlansStore();
  const documentKey = useApp(documentKeyOf);
  // another document may use the same ids for its schemes
  const isOfScheme = of?.documentKey === documentKey && of.schemeId === scheme.id;
  return { plans: isOfScheme ? plans : null, isOld: of?.setup !== setup, failed };
};

const worker = askedWorker<PlansAnswer>(
  () => new Worker(new URL('../workers/plans.worker.ts', import.meta.url), { type: 'module' }),
);
let wanted: Wanted | null = null;
/** What was asked last: what failed is not asked again by itself. */
let last: Wanted | null = null;
let sent: Setup | null = null;

const areSame = (a: Wanted | null, b: Wanted): boolean =>
  a?.setup === b.setup && a.schemeId === b.schemeId && a.documentKey === b.documentKey;

const ask = (): void => {
  if (worker.isBusy || !wanted || areSame(last, wanted)) return;
  const of = wanted;
  last = of;
  worker.ask({
    request: (id, isNew): PlansRequest => {
      const files = withoutKnownFiles(of.setup, isNew ? null : sent);
      sent = of.setup;
      return { id, stageKey: stageKeyOf(of.setup), ...files, schemeIds: [of.schemeId] };
    },
    onAnswer: ({ plans }) => {
      usePlansStore.setState({ of, plans, failed: false });
      ask();
    },
    onFail: () => {
      usePlansStore.setState({ of: null, plans: [], failed: true });
      ask();
    },
  });
};

/** Asks once more for ways that could not be worked out. */
export const retryPlans = (): void => {
  last = null;
  usePlansStore.setState({ failed: false });
  ask();
};

/** Asks for the ways to light a scheme: one question at a time, always the newest. */
export const wantPlans = (setup: Setup, schemeId: string): void => {
  wanted = { setup, schemeId, documentKey: documentKeyOf(useApp.getState()) };
  ask();
};
