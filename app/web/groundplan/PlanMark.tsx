import type { KeyboardEvent, ReactNode } from 'react';
import type { GroundPoint } from '../../../core/geometry/hull.ts';
import type { Position } from '../../../core/setup/schema/setup.ts';
import { useApp } from '../state/app-store.ts';
import { fromPlan, type PlanView, toPlan } from '../ui/plan-view.ts';
import { nudgedPosition } from './nudge.ts';
import { toStep } from './to-step.ts';
import { useDrag } from './use-drag.ts';

interface PlanMarkProps {
  readonly view: PlanView;
  readonly position: Position;
  /** What Alt and an arrow walk round; null where there is nothing to walk round. */
  readonly aim: Position | null;
  readonly label: string;
  readonly isSelected: boolean;
  readonly onSelect: () => void;
  /** `run` is set for steps by key: they belong together while the key is held. */
  readonly onMove: (position: Position, run?: string) => void;
  /** What the Delete key does; without it, nothing. */
  readonly onDelete?: () => void;
  /** How near a pointer takes hold of it, in drawing units; less for what stands close to others. */
  readonly targetRadius?: number;
  readonly children: ReactNode;
}

/** Something on the plan that can be dragged, nudged with keys, and selected. */
export const PlanMark = ({
  view,
  position,
  aim,
  label,
  isSelected,
  onSelect,
  onMove,
  onDelete,
  targetRadius = 30,
  children,
}: PlanMarkProps) => {
  const at = toPlan(view, position);
  const moveTo = (place: GroundPoint, inSteps: boolean) => {
    // Shift: to the tenth of a metre
    const [east, north] = fromPlan(view, place).map((v) => toStep(v, inSteps ? 0.1 : 0.01)) as [number, number];
    onMove([east, north, position[2]]);
  };
  const drag = useDrag(at, moveTo, onSelect);
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter' || event.key === ' ') {
      event.preventDefault();
      onSelect();
      return;
    }
    if (onDelete && (event.key === 'Delete' || event.key === 'Backspace')) {
      event.preventDefault();
      onDelete();
      return;
    }
    const next = nudgedPosition(event, view, position, aim);
    if (!next) return;
    event.preventDefault();
    onSelect();
    onMove(next, `nudge ${label.split(',')[0]}`);
  };
  return (
    <g
      className={isSelected ? 'mark mark-selected' : 'mark'}
      transform={`translate(${at[0]} ${at[1]})`}
      role="button"
      tabIndex={0}
      aria-label={label}
      aria-pressed={isSelected}
      onFocus={() => useApp.getState().history.gestureStart === null && onSelect()}
      onKeyDown={onKeyDown}
      {...drag}
    >
      <circle r={targetRadius} className="mark-target" />
      {children}
    </g>
  );
};
