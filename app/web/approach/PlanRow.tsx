import type { StrategyPlan } from '../../../core/readings/strategy-plan.ts';
import { exposureWords, outcomeWords, settingWords, walkWords } from './plan-words.ts';

interface PlanRowProps {
  readonly name: string;
  readonly what: string;
  readonly plan: StrategyPlan;
  readonly onTake: () => void;
}

/** One strategy: what it is, what each pass would be, whether it can be walked, and the button that makes it. */
export const PlanRow = ({ name, what, plan, onTake }: PlanRowProps) => (
  <li className="approach" data-strategy={plan.strategy}>
    <h3>{name}</h3>
    <p className="quiet">{what}</p>
    <p>{exposureWords(plan)}</p>
    <ul>
      {plan.passes.map((pass, p) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: passes of several frames may share a name, and the list is not edited
        <li key={p}>
          <strong>{pass.name}</strong> {settingWords(pass)} · {outcomeWords(pass)}
          {pass.advice.length > 0 && <span className="quiet"> {pass.advice.join(' ')}</span>}
        </li>
      ))}
    </ul>
    <p>{walkWords(plan)}</p>
    {plan.strategy === 'standing' && (
      <p className="quiet">Some places allow no more than a quarter moon, 0.01 to 0.03 lx, or no lamps: ask locally.</p>
    )}
    <button type="button" className="small" onClick={onTake}>
      Make a scheme of it
    </button>
  </li>
);
