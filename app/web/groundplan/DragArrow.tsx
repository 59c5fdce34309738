import type { Position, Scheme } from '../../../core/setup/schema/setup.ts';
import { useSetup } from '../state/app-store.ts';
import { isLampHinted, useHints } from '../state/hints.ts';
import { type PlanView, toPlan } from '../ui/plan-view.ts';

/**
 * Half an hour from six, where light is as flat as at the lens: at six whoever holds the lamp would stand before what it
 * lights.
 */
const besideRadians = Math.PI / 12;

/** Drawing units between the arrow and what it leads from and to. */
const gap = 34;

/**
 * An arc round the middle from a lamp to beside the camera, half an hour from six on its own side, without a word; null where
 * it would have no length.
 */
export const arrowPath = (view: PlanView, lamp: Position): string | null => {
  const [x, y] = toPlan(view, lamp);
  const radius = Math.hypot(x, y);
  // clockwise from six, 0 at the bottom, -pi to pi
  const turn = Math.atan2(-x, y);
  const margin = gap / Math.max(radius, 1);
  if (radius < 60 || Math.abs(turn) < besideRadians + 3 * margin) return null;
  const way = Math.sign(turn);
  const at = (angle: number) => [-radius * Math.sin(angle), radius * Math.cos(angle)] as const;
  const end = besideRadians + margin;
  const [from, to] = [at(turn - way * margin), at(way * end)];
  const back = at(way * (end + 12 / radius));
  // the head's two strokes, either side of the arc
  const [dx, dy] = [(back[0] - to[0]) / 2, (back[1] - to[1]) / 2];
  const head = `M${back[0] - dy} ${back[1] + dx}L${to[0]} ${to[1]}L${back[0] + dy} ${back[1] - dx}`;
  return `M${from[0]} ${from[1]}A${radius} ${radius} 0 0 ${way > 0 ? 0 : 1} ${to[0]} ${to[1]}${head}`;
};

/** Where the first lamp may be dragged to, until one was. */
export const DragArrow = ({ view, scheme }: { view: PlanView; scheme: Scheme }) => {
  const isAway = useHints(({ away }) => away.includes('lamp'));
  const isHinted = isLampHinted(useSetup());
  const lamp = scheme.frames.flatMap(({ passes }) => passes)[0]?.waypoints[0];
  const path = isAway || !isHinted || !lamp ? null : arrowPath(view, lamp.position);
  return path === null ? null : <path className="drag-arrow" d={path} aria-hidden="true" />;
};
