import type { Pass } from '../../../core/setup/schema/setup.ts';
import type { Stage } from '../../../core/world/stage.ts';
import { groundShadows } from '../ui/ground-shadows.ts';
import { hatchPath } from '../ui/hatch.ts';
import { isLand } from '../ui/plan-land.ts';
import { type PlanView, toPlan } from '../ui/plan-view.ts';

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
  if (!place) return null;
  const [x, y] = toPlan(view, place.position);
  const [ax, ay] = toPlan(view, place.aim);
  const turn = Math.atan2(ay - y, ax - x);
  return (
    <g className={isSelected ? 'shadow shadow-selected' : 'shadow'}>
      {groundShadows(stage, place)
        .filter(({ subject }) => !isLand(view, subject))
        .map(({ subject, outlines }) => {
          const onPlan = outlines.map((outline) => outline.map((point) => toPlan(view, point)));
          return <path key={subject.id} d={hatchPath(onPlan, turn, hatchSpacing)} />;
        })}
    </g>
  );
};
