import type { GroundPoint } from '../../../core/geometry/hull.ts';
import type { Subject } from '../../../core/setup/schema/setup.ts';
import type { StageSubject } from '../../../core/world/stage.ts';
import { useApp } from '../state/app-store.ts';
import { moveSubject } from '../state/edits/move-subjects.ts';
import { footprintOf } from '../ui/footprint.ts';
import { pathOf } from '../ui/plan-paths.ts';
import { type PlanView, toPlan } from '../ui/plan-view.ts';
import { PlanMark } from './PlanMark.tsx';

interface SubjectMarkProps {
  readonly view: PlanView;
  readonly subject: Subject;
  readonly onStage: StageSubject;
  readonly isSelected: boolean;
}

/** A subject from above, drawn by its outline. */
export const SubjectMark = ({ view, subject, onStage, isSelected }: SubjectMarkProps) => {
  const { edit, select } = useApp.getState();
  const [x, y] = toPlan(view, subject.position);
  const outline = footprintOf(onStage).map((point): GroundPoint => {
    const [px, py] = toPlan(view, point);
    return [px - x, py - y];
  });
  return (
    <PlanMark
      view={view}
      position={subject.position}
      aim={null}
      label={`${subject.name}, a subject. Arrow keys move it.`}
      isSelected={isSelected}
      onSelect={() => select({ kind: 'subject', subjectId: subject.id })}
      onMove={(to, run) => edit((setup) => moveSubject(setup, subject.id, to), run)}
    >
      <path d={pathOf(outline)} className="footprint" />
    </PlanMark>
  );
};
