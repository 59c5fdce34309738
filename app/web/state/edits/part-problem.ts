import { part } from '../../../../core/setup/schema/part.ts';
import type { Part } from '../../../../core/setup/schema/setup.ts';

/** Why a part can't be as it is: the field, as a path into the part, and what was expected of it. */
export interface PartProblem {
  readonly path: readonly PropertyKey[];
  /** "Must be at least twice the radius". */
  readonly text: string;
}

/** The first thing about a part that the document does not take; null where it takes it. */
export const partProblem = (candidate: Part): PartProblem | null => {
  const result = part.safeParse(candidate);
  if (result.success) return null;
  const [issue] = result.error.issues;
  const text = issue?.message ?? 'is not as expected';
  return { path: issue?.path ?? [], text: text.charAt(0).toUpperCase() + text.slice(1) };
};
