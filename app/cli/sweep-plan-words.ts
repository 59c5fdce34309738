import type { Lamp, Pass } from '../../core/setup/schema/setup.ts';
import { defaultPlan } from '../../core/sweep/default-plan.ts';
import { SweepError, type SweepField } from '../../core/sweep/sweep-error.ts';
import { type SweepPlan, sweepLimits } from '../../core/sweep/sweep-plan.ts';
import { CommandError } from './command.ts';
import { numbersOption, type Words, wholeOption } from './read-words.ts';

/** Options that say which kind of sweep; none of them means angles. */
const kindOptions = ['heights', 'distances', 'ratios', 'gels'] as const;

/** Heights or steps alone, or both, are angles; one step leaves the lamp at its bearing, so that only heights are swept. */
const placePlan = (words: Words, pass: Pass, lamp: Lamp, usage: string): SweepPlan => {
  const heightsMetres = numbersOption(words, 'heights', usage);
  const steps = wholeOption(words, 'steps', sweepLimits.steps, 12, usage);
  const preset = defaultPlan(steps === 1 ? 'heights' : 'angles', pass, lamp);
  const plan = preset.kind === 'angles' ? { ...preset, steps } : preset;
  return heightsMetres === undefined ? plan : ({ ...plan, heightsMetres } as SweepPlan);
};

/** The plan that the options ask for. Throws `CommandError` when they ask for more than one kind, or for no numbers. */
export const planOf = (words: Words, pass: Pass, lamp: Lamp, usage: string): SweepPlan => {
  const set = kindOptions.filter(words.isSet);
  const [kind = 'heights', more] = set;
  if (more !== undefined) throw new CommandError(`--${more} can't go with --${kind}; usage: ${usage}`);
  if (kind === 'heights') return placePlan(words, pass, lamp, usage);
  if (words.isSet('steps')) throw new CommandError(`--steps can't go with --${kind}; usage: ${usage}`);
  if (kind === 'gels') return defaultPlan('gels', pass, lamp);
  const values = numbersOption(words, kind, usage) ?? [];
  return kind === 'distances' ? { kind, distancesMetres: values } : { kind, stops: values };
};

/** The option that a field of a plan comes from. */
const optionOf: Partial<Record<SweepField, string>> = {
  pass: 'pass',
  steps: 'steps',
  heightsMetres: 'heights',
  distancesMetres: 'distances',
  stops: 'ratios',
};

/** What the core refuses about a sweep, told as the other faults of the terminal are. */
export const faultOf = (error: unknown): unknown => {
  if (!(error instanceof SweepError)) return error;
  const option = optionOf[error.field];
  return new CommandError(`${option ? `--${option}` : 'the lamp'} ${error.expected}`);
};
