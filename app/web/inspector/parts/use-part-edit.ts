import { useState } from 'react';
import type { Part } from '../../../../core/setup/schema/setup.ts';
import { useApp } from '../../state/app-store.ts';
import { changePart } from '../../state/edits/part-edits.ts';
import { type PartProblem, partProblem } from '../../state/edits/part-problem.ts';

/** Takes a part as it should be; `run` is set for steps by key, which belong together. */
export type PutPart = (next: Part, run?: string) => void;

/** Edits a part where the document takes it; else the part stays, and the reason is there to be shown in place. */
export const usePartEdit = (
  subjectId: string,
  index: number,
  part: Part,
): { readonly put: PutPart; readonly problem: PartProblem | null } => {
  const [refused, setRefused] = useState<{ readonly part: Part; readonly problem: PartProblem } | null>(null);
  const { edit } = useApp.getState();
  const put: PutPart = (next, run) => {
    const problem = partProblem(next);
    setRefused(problem && { part, problem });
    if (!problem) edit((s) => changePart(s, subjectId, index, next), run);
  };
  // a reason that was given for the part as it was before is stale
  return { put, problem: refused?.part === part ? refused.problem : null };
};
