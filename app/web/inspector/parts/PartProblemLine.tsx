import type { PartProblem } from '../../state/edits/part-problem.ts';

/** Why a part was not changed, where the change was made. */
export const PartProblemLine = ({
  problem,
  of,
}: {
  problem: PartProblem | null;
  /** Fields of the part that the line is about. */
  of: readonly string[];
}) =>
  problem && of.includes(String(problem.path[0])) ? (
    <p role="alert" className="part-problem">
      {problem.text}. It stays as it was.
    </p>
  ) : null;
