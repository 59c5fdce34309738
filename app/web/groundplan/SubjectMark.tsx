import type { GroundPoint } from '../../../core/geometry/hull.ts';
import type { Subject } from '../../../core/setup/schema/setup.ts';
import type { StageSubject } from '../../../core/world/stage.ts';
import { useApp } from '../state/app-store.ts';
import { deleteSubject } from '../state/delete-subject.ts';
import { moveSubject } from '../state/edits/move-subjects.ts';
import { footprintOf, partFootprintsOf } from '../ui/footprint.ts';
import { pathOf, pathOfAll } from '../ui/plan-paths.ts';
import { type PlanView, toPlan } from '../ui/plan-view.ts';
import { PlanMark } from './PlanMark.tsx';
import { TurnHandle } from './TurnHandle.tsx';

interface SubjectMarkProps {
  readonly view: PlanView;
  readonly subject: Subject;
  readonly onStage: StageSubject;
  readonly isSelected: boolean;
  /** Land that the rest stands on is drawn fainter. */
  readonly isLand: boolean;
}

/** A subject from above, drawn by the outlines of its parts; it is taken hold of anywhere between them. */
export const SubjectMark = ({ view, subject, onStage, isSelected, isLand }: SubjectMarkProps) => {
  const { edit, select } = useApp.getState();
  const { id, name, locked } = subject;
  const [x, y] = toPlan(view, subject.position);
  const onDrawing = (outline: readonly GroundPoint[]) =>
    outline.map((point): GroundPoint => {
      const [px, py] = toPlan(view, point);
      return [px - x, py - y];
    });
  const outline = onDrawing(footprintOf(onStage));
  const looks = ['footprint', locked ? 'footprint-locked' : '', isLand ? 'footprint-land' : ''];
  const reach = Math.min(Math.max(26, ...outline.map(([px, py]) => Math.hypot(px, py) + 16)), 150);
  return (
    <>
      {isSelected && !locked && <TurnHandle view={view} subject={subject} reach={reach} />}
      <PlanMark
        view={view}
        position={subject.position}
        aim={null}
        label={`${name}, a subject${locked ? ', locked' : '. Arrow keys move it, Delete takes it away'}.`}
        isSelected={isSelected}
        onSelect={() => select({ kind: 'subject', subjectId: id })}
        onDelete={() => deleteSubject(subject)}
        onMove={(to, run) => edit((setup) => moveSubject(setup, id, to), run)}
      >
        <path d={pathOf(outline)} className="footprint-hold" />
        <path d={pathOfAll(partFootprintsOf(onStage).map(onDrawing))} className={looks.filter(Boolean).join(' ')} />
      </PlanMark>
    </>
  );
};
