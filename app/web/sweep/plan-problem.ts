import { SweepError, type SweepField } from '../../../core/sweep/sweep-error.ts';
import { checkPlan, type SweepPlan } from '../../../core/sweep/sweep-plan.ts';

const fieldWords: Readonly<Record<SweepField, string>> = {
  pass: 'The pass',
  steps: 'Steps',
  heightsMetres: 'Heights',
  distancesMetres: 'Distances',
  gels: 'Gels',
  stops: 'Ratios',
  place: 'The place of the lamp',
};

/** Why a sweep can't be made, as a sentence. */
export const problemText = ({ field, expected }: SweepError): string => `${fieldWords[field]} ${expected}.`;

/** Why a plan is not taken, as a sentence; null when it is. */
export const planProblem = (plan: SweepPlan): string | null => {
  try {
    checkPlan(plan);
    return null;
  } catch (error) {
    if (error instanceof SweepError) return problemText(error);
    throw error;
  }
};
