import { useMemo } from 'react';
import { shadowOutline } from '../../../core/readings/shadow-reading.ts';
import type { Pass } from '../../../core/setup/schema/setup.ts';
import { worldFromDocument } from '../../../core/world/axes.ts';
import type { Stage } from '../../../core/world/stage.ts';
import { hatchPath } from './hatch.ts';
import { type PlanView, toPlan } from './plan-view.ts';

/** Between hatch lines, in drawing units. */
const hatchSpacing = 6;

interface ShadowShapesProps {
  readonly view: PlanView;
  readonly stage: Stage;
  readonly pass: Pass;
  readonly isSelected: boolean;
}

/** Ground shadows of one pass, hatched along the way they point. */
export const ShadowShapes = ({ view, stage, pass, isSelected }: ShadowShapesProps) => {
  const place = pass.waypoints[0];
  const shapes = useMemo(() => {
    if (!place) return [];
    const lamp = worldFromDocument(place.position);
    return stage.subjects.map((subject) => ({ id: subject.id, outline: shadowOutline(subject, lamp) }));
  }, [stage, place]);
  if (!place) return null;
  const [x, y] = toPlan(view, place.position);
  const [ax, ay] = toPlan(view, place.aim);
  const turn = Math.atan2(ay - y, ax - x);
  return (
    <g className={isSelected ? 'shadow shadow-selected' : 'shadow'}>
      {shapes.map(({ id, outline }) => {
        const onPlan = outline.map((point) => toPlan(view, point));
        return <path key={id} d={hatchPath(onPlan, turn, hatchSpacing)} />;
      })}
    </g>
  );
};
