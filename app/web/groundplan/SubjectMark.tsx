import { convexHull, type GroundPoint } from '../../../core/geometry/hull.ts';
import type { Subject } from '../../../core/setup/schema/setup.ts';
import type { StageSubject } from '../../../core/world/stage.ts';
import { useApp } from '../state/app-store.ts';
import { moveSubject } from '../state/edits/place-edits.ts';
import { PlanMark } from './PlanMark.tsx';
import { type PlanView, pathOf, toPlan } from './plan-view.ts';

const footprints = new WeakMap<StageSubject, GroundPoint[]>();
const footprintOf = (subject: StageSubject): GroundPoint[] => {
  const known = footprints.get(subject);
  if (known) return known;
  const { points } = subject;
  const places = Array.from(
    { length: points.length / 3 },
    (_, i): GroundPoint => [points[3 * i] as number, -(points[3 * i + 2] as number)],
  );
  const hull = convexHull(places);
  footprints.set(subject, hull);
  return hull;
};

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
