import type { KeyboardEvent } from 'react';
import type { GroundPoint } from '../../../core/geometry/hull.ts';
import type { Hazard } from '../../../core/setup/schema/setup.ts';
import { useApp } from '../state/app-store.ts';
import { moveHazard, removeHazard, resizeHazard } from '../state/edits/hazard-edits.ts';
import { hazardPath } from '../ui/hazard-path.ts';
import { worded } from '../ui/lengths.ts';
import { fromPlan, type PlanView, planHalf, toPlan } from '../ui/plan-view.ts';
import { PlanMark } from './PlanMark.tsx';
import { toStep } from './to-step.ts';
import { useDrag } from './use-drag.ts';

interface HazardMarkProps {
  readonly view: PlanView;
  readonly hazard: Hazard;
  readonly isSelected: boolean;
}

/** A knob on the ring's edge that makes it wider and narrower: by drag, or by keys. */
const WidthHandle = ({ view, hazard }: Pick<HazardMarkProps, 'view' | 'hazard'>) => {
  const { edit } = useApp.getState();
  const { id, name, radiusMetres } = hazard;
  const middle = toPlan(view, hazard.position);
  const reach = Math.max(radiusMetres * view.unitsPerMetre, 24);
  // on the side where the drawing has room
  const side = middle[0] + reach < planHalf * 0.96 ? 1 : -1;
  const at: GroundPoint = [middle[0] + side * reach, middle[1]];
  const moveTo = (place: GroundPoint, inSteps: boolean) => {
    const [east, north] = fromPlan(view, place);
    const metres = Math.hypot(east - hazard.position[0], north - hazard.position[1]);
    edit((setup) => resizeHazard(setup, id, toStep(metres, inSteps ? 0.5 : 0.1)));
  };
  const drag = useDrag(at, moveTo, () => undefined);
  const onKeyDown = (event: KeyboardEvent) => {
    const way = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1 }[event.key];
    if (!way) return;
    event.preventDefault();
    edit((setup) => resizeHazard(setup, id, radiusMetres + way * (event.shiftKey ? 1 : 0.1)), `resize ${id}`);
  };
  return (
    <g
      className="mark turn-handle"
      transform={`translate(${at[0]} ${at[1]})`}
      role="slider"
      tabIndex={0}
      aria-label={`Reach of ${name}. ${worded('Arrow keys change it by 0.1 m, with Shift by 1 m.')}`}
      aria-valuemin={0.5}
      aria-valuemax={500}
      aria-valuenow={radiusMetres}
      aria-valuetext={worded(`${radiusMetres} m`)}
      onKeyDown={onKeyDown}
      {...drag}
    >
      <circle r={22} className="mark-target" />
      <circle r={6} className="turn-ring" />
    </g>
  );
};

/** The name stands inside the ring's lower edge, under a small ring, and always on the drawing. */
const nameAt = (view: PlanView, { position, radiusMetres }: Hazard): number => {
  const [, y] = toPlan(view, position);
  const radius = radiusMetres * view.unitsPerMetre;
  // clear of the ring's strokes
  const wish = radius < 44 ? radius + 14 : radius - 22;
  return Math.min(Math.max(y + wish, 20 - planHalf), planHalf - 8) - y;
};

/** A hazard from above: a ring with strokes inward, its name in it; dragged, resized and deleted like everything else. */
export const HazardMark = ({ view, hazard, isSelected }: HazardMarkProps) => {
  const { edit, select } = useApp.getState();
  const { id, name, position, radiusMetres } = hazard;
  const radius = radiusMetres * view.unitsPerMetre;
  return (
    <>
      <PlanMark
        view={view}
        position={[...position, 0]}
        aim={null}
        label={`${name}, a hazard, reaches ${worded(`${radiusMetres} m`)}. Arrow keys move it, Delete takes it away.`}
        isSelected={isSelected}
        onSelect={() => select({ kind: 'hazard', hazardId: id })}
        onDelete={() => edit((setup) => removeHazard(setup, id))}
        onMove={(to, run) => edit((setup) => moveHazard(setup, id, to), run)}
      >
        <path d={hazardPath(radius)} className="hazard-ring" />
        <text y={nameAt(view, hazard)} className="mark-text hour">
          {name}
        </text>
      </PlanMark>
      {isSelected && <WidthHandle view={view} hazard={hazard} />}
    </>
  );
};
