import type { Subject } from '../../../core/setup/schema/setup.ts';
import type { Stage, StageSubject } from '../../../core/world/stage.ts';
import { useApp, useSetup } from '../state/app-store.ts';
import { largestFirst } from '../ui/footprint.ts';
import { isLand } from '../ui/plan-land.ts';
import type { PlanView } from '../ui/plan-view.ts';
import { SubjectMark } from './SubjectMark.tsx';

interface SubjectMarksProps {
  readonly view: PlanView;
  readonly stage: Stage;
  /** Whether to draw the land, which lies under rings and clock, or what stands on it. */
  readonly land: boolean;
}

/** Subjects from above, the largest at the back. */
export const SubjectMarks = ({ view, stage, land }: SubjectMarksProps) => {
  const { subjects } = useSetup();
  const selection = useApp((state) => state.selection);
  const shown = subjects.flatMap((subject): { subject: Subject; onStage: StageSubject }[] => {
    const onStage = stage.subjects.find(({ id }) => id === subject.id);
    return onStage && isLand(view, onStage) === land ? [{ subject, onStage }] : [];
  });
  return largestFirst(shown, ({ onStage }) => onStage).map(({ subject, onStage }) => (
    <SubjectMark
      key={subject.id}
      view={view}
      subject={subject}
      onStage={onStage}
      isLand={land}
      isSelected={selection?.kind === 'subject' && selection.subjectId === subject.id}
    />
  ));
};
