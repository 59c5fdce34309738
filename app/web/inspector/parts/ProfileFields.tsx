import type { PartOf } from '../../../../core/setup/schema/setup.ts';
import type { PartProblem } from '../../state/edits/part-problem.ts';
import { PartProblemLine } from './PartProblemLine.tsx';
import { PointsEditor } from './PointsEditor.tsx';
import type { PutPart } from './use-part-edit.ts';

interface ProfileFieldsProps {
  readonly turned: PartOf<'turned'>;
  readonly put: PutPart;
  readonly problem: PartProblem | null;
}

/** Half the section of a turned shape. */
export const ProfileFields = ({ turned, put, problem }: ProfileFieldsProps) => {
  const { profile, closed } = turned;
  return (
    <PointsEditor
      points={profile}
      isClosed={closed}
      axes={['From the axis', 'Up']}
      leastAcross={0}
      fewest={2}
      most={128}
      isTurned
      onChange={(points, run) => put({ ...turned, profile: points }, run)}
      onInsert={(at, point) => put({ ...turned, profile: profile.toSpliced(at, 0, point) })}
      onRemove={(at) => put({ ...turned, profile: profile.toSpliced(at, 1) })}
    >
      <PartProblemLine problem={problem} of={['profile']} />
    </PointsEditor>
  );
};
