import type { Strategy } from '../../../core/readings/strategy-frames.ts';
import type { StrategyPlan } from '../../../core/readings/strategy-plan.ts';
import type { ReportRequest } from './report-messages.ts';

/** All that are worked out for a scheme. */
export const strategies: readonly Strategy[] = ['one-frame', 'standing', 'separate'];

/** `schemeIds` has one. */
export type PlansRequest = ReportRequest;

export interface PlansAnswer {
  readonly id: number;
  readonly plans: readonly StrategyPlan[];
}
