import type { KeyboardEvent } from 'react';
import type { GroundPoint } from '../../../core/geometry/hull.ts';
import type { Position } from '../../../core/setup/schema/setup.ts';
import type { PlanView } from '../ui/plan-view.ts';

const arrows: Readonly<Record<string, GroundPoint>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

/** A ten-minute walk of the clock is five degrees. */
const clockStepRadians = (5 * Math.PI) / 180;

const round = (metres: number) => Math.round(metres * 1000) / 1000;

/** `position` carried round `aim` on the ground, clockwise seen from above. */
const roundTheClock = (position: Position, aim: Position, radians: number): Position => {
  const [e, n] = [position[0] - aim[0], position[1] - aim[1]];
  const [c, s] = [Math.cos(radians), Math.sin(radians)];
  return [round(aim[0] + e * c + n * s), round(aim[1] - e * s + n * c), position[2]];
};

/**
 * Where a key moves a thing to: arrows 0.1 m as the drawing lies (Shift: 1 m), Page Up and Page Down in height, Alt with
 * left and right round the clock. null for other keys.
 */
export const nudgedPosition = (
  event: KeyboardEvent,
  view: PlanView,
  position: Position,
  aim: Position | null,
): Position | null => {
  const metres = event.shiftKey ? 1 : 0.1;
  if (event.key === 'PageUp' || event.key === 'PageDown') {
    const up = event.key === 'PageUp' ? metres : -metres;
    return [position[0], position[1], round(position[2] + up)];
  }
  const arrow = arrows[event.key];
  if (!arrow) return null;
  if (event.altKey) return aim && arrow[0] !== 0 ? roundTheClock(position, aim, arrow[0] * clockStepRadians) : null;
  const [right, ahead] = [arrow[0] * metres, arrow[1] * metres];
  const { up } = view;
  return [
    round(position[0] + right * up[1] + ahead * up[0]),
    round(position[1] - right * up[0] + ahead * up[1]),
    position[2],
  ];
};
