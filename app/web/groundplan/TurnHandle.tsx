import type { KeyboardEvent } from 'react';
import type { GroundPoint } from '../../../core/geometry/hull.ts';
import type { Subject } from '../../../core/setup/schema/setup.ts';
import { degreesFromRadians, halfTurnDegrees, radiansFromDegrees } from '../../../core/units/angle.ts';
import { useApp } from '../state/app-store.ts';
import { turnSubject } from '../state/edits/move-subjects.ts';
import { fromPlan, type PlanView, toPlan } from '../ui/plan-view.ts';
import { toStep } from './to-step.ts';
import { useDrag } from './use-drag.ts';

/** A step with Shift held, degrees. */
const stepDegrees = 15;

interface TurnHandleProps {
  readonly view: PlanView;
  readonly subject: Subject;
  /** How far from the subject's place, in units of the drawing. */
  readonly reach: number;
}

/** A ring beside a subject, on its own north side, that turns it: by drag, or by keys. */
export const TurnHandle = ({ view, subject, reach }: TurnHandleProps) => {
  const { edit } = useApp.getState();
  const turn = radiansFromDegrees(subject.turnDegrees);
  const [east, north] = subject.position;
  const metres = reach / view.unitsPerMetre;
  const at = toPlan(view, [east + Math.sin(turn) * metres, north + Math.cos(turn) * metres]);
  const middle = toPlan(view, subject.position);
  const moveTo = (place: GroundPoint, inSteps: boolean) => {
    const [e, n] = fromPlan(view, place);
    const degrees = degreesFromRadians(Math.atan2(e - east, n - north));
    edit((setup) => turnSubject(setup, subject.id, halfTurnDegrees(toStep(degrees, inSteps ? stepDegrees : 1))));
  };
  const drag = useDrag(at, moveTo, () => undefined);
  const onKeyDown = (event: KeyboardEvent) => {
    const way = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1 }[event.key];
    if (!way) return;
    event.preventDefault();
    const degrees = halfTurnDegrees(subject.turnDegrees + way * (event.shiftKey ? stepDegrees : 1));
    edit((setup) => turnSubject(setup, subject.id, degrees), `turn ${subject.id}`);
  };
  return (
    <g>
      <path d={`M${middle[0]} ${middle[1]}L${at[0]} ${at[1]}`} className="turn-line" aria-hidden="true" />
      <g
        className="mark turn-handle"
        transform={`translate(${at[0]} ${at[1]})`}
        role="slider"
        tabIndex={0}
        aria-label={`Turn ${subject.name}. Arrow keys turn it a degree, with Shift ${stepDegrees}.`}
        aria-valuemin={-180}
        aria-valuemax={180}
        aria-valuenow={halfTurnDegrees(subject.turnDegrees)}
        aria-valuetext={`${Math.round(halfTurnDegrees(subject.turnDegrees))}°`}
        onKeyDown={onKeyDown}
        {...drag}
      >
        <circle r={22} className="mark-target" />
        <circle r={6} className="turn-ring" />
      </g>
    </g>
  );
};
