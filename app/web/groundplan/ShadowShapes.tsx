import { useMemo } from 'react';
import { shadowOutline } from '../../../core/readings/shadow-reading.ts';
import type { Pass } from '../../../core/setup/schema/setup.ts';
import { worldFromDocument } from '../../../core/world/axes.ts';
import type { Stage } from '../../../core/world/stage.ts';
import { type PlanView, pathOf, toPlan } from './plan-view.ts';

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
  const turn = (Math.atan2(ay - y, ax - x) * 180) / Math.PI;
  const hatch = `hatch-${pass.id}`;
  return (
    <g className={isSelected ? 'shadow shadow-selected' : 'shadow'} aria-hidden="true">
      <pattern id={hatch} width={6} height={6} patternUnits="userSpaceOnUse" patternTransform={`rotate(${turn})`}>
        <line x1={0} y1={3} x2={6} y2={3} />
      </pattern>
      {shapes.map(({ id, outline }) => (
        <path key={id} d={pathOf(outline.map((point) => toPlan(view, point)))} fill={`url(#${hatch})`} />
      ))}
    </g>
  );
};
