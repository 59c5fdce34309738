import { strategyPlan } from '../../../core/readings/strategy-plan.ts';
import { type PlansAnswer, type PlansRequest, strategies } from './plans-messages.ts';
import { setupKeeper } from './request-parts.ts';

const setupOf = setupKeeper();

self.onmessage = ({ data }: MessageEvent<PlansRequest>) => {
  const setup = setupOf(data);
  const plans = setup.schemes
    .filter(({ id }) => data.schemeIds.includes(id))
    .flatMap((scheme) => strategies.map((strategy) => strategyPlan(setup, scheme, strategy)));
  const answer: PlansAnswer = { id: data.id, plans };
  self.postMessage(answer);
};
