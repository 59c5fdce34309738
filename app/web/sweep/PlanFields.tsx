import type { SweepPlan } from '../../../core/sweep/sweep-plan.ts';
import { sweepLimits } from '../../../core/sweep/sweep-plan.ts';
import { NumberField } from '../ui/NumberField.tsx';
import { parseHeight } from '../ui/parse-height.ts';
import { parseQuantity } from '../ui/parse-quantity.ts';
import { parseStops } from '../ui/parse-stops.ts';
import { ListField } from './ListField.tsx';
import { planProblem } from './plan-problem.ts';

const parseMetres = (text: string) => parseQuantity(text, 'm');
const [fewestSteps, mostSteps] = sweepLimits.steps;

interface PlanFieldsProps {
  readonly plan: SweepPlan;
  readonly onChange: (plan: SweepPlan) => void;
}

/** The few numbers of a sweep. */
export const PlanFields = ({ plan, onChange }: PlanFieldsProps) => {
  /** A list of the plan, with what the plan would be with other numbers in it. */
  const list = (planWith: (values: readonly number[]) => SweepPlan) => ({
    refuse: (values: readonly number[]) => planProblem(planWith(values)),
    onChange: (values: readonly number[]) => onChange(planWith(values)),
  });
  switch (plan.kind) {
    case 'angles':
      return (
        <>
          <NumberField
            label="Steps"
            unit=""
            value={plan.steps}
            min={fewestSteps}
            max={mostSteps}
            onChange={(steps) => onChange({ ...plan, steps: Math.round(steps) })}
          />
          <ListField
            label="Heights"
            values={plan.heightsMetres}
            unit="m"
            example="0.3, 1, 2.2 or shin, hip"
            parse={parseHeight}
            {...list((heightsMetres) => ({ ...plan, heightsMetres }))}
          />
        </>
      );
    case 'heights':
      return (
        <ListField
          label="Heights"
          values={plan.heightsMetres}
          unit="m"
          example="0.3, 1, 2.2 or shin, hip"
          parse={parseHeight}
          {...list((heightsMetres) => ({ kind: 'heights', heightsMetres }))}
        />
      );
    case 'distances':
      return (
        <ListField
          label="Level distances"
          values={plan.distancesMetres}
          unit="m"
          example="2, 4, 8"
          parse={parseMetres}
          {...list((distancesMetres) => ({ kind: 'distances', distancesMetres }))}
        />
      );
    case 'ratios':
      return (
        <ListField
          label="Stops under the key"
          values={plan.stops}
          unit="stops"
          example="0, 1, 2"
          parse={parseStops}
          {...list((stops) => ({ kind: 'ratios', stops }))}
        />
      );
    case 'gels':
      return <p className="sweep-gels quiet">{plan.gels.map(({ name }) => name).join(', ')}</p>;
  }
};
