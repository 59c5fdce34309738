import type { GroundPoint } from '../../geometry/hull.ts';
import type { Shape } from '../sheet/shapes.ts';
import { type } from '../sheet/type.ts';
import { circleRadius, type PlacedCircle } from './place-circles.ts';
import type { PlanFrame } from './plan-frame.ts';
import { stroke } from './strokes.ts';

/** From the edge of the plan to the hours, millimetres. */
const inset = 4.5;

/** The hours round the mark, camera at six, as far out as the plan lets them; one that a circle would hide is left out. */
export const clockShapes = ({ box }: PlanFrame, mark: GroundPoint, circles: readonly PlacedCircle[]): Shape[] => {
  const radius =
    Math.min(mark[0] - box.x, box.x + box.width - mark[0], mark[1] - box.y, box.y + box.height - mark[1]) - inset;
  return Array.from({ length: 12 }, (_, h): Shape[] => {
    const hour = h + 1;
    // six is down the paper; hours go clockwise
    const turn = (hour * Math.PI) / 6;
    const at = (r: number): GroundPoint => [mark[0] + r * Math.sin(turn), mark[1] - r * Math.cos(turn)];
    const [x, y] = at(radius);
    const isHidden = circles.some(({ middle }) => Math.hypot(middle[0] - x, middle[1] - y) < circleRadius + 2.6);
    const [tickFrom, tickTo] = [at(radius - 3.4), at(radius - 5)];
    return [
      {
        kind: 'line',
        x1: tickFrom[0],
        y1: tickFrom[1],
        x2: tickTo[0],
        y2: tickTo[1],
        width: stroke,
      },
      ...(isHidden
        ? []
        : [
            {
              kind: 'text',
              text: String(hour),
              style: type.body,
              anchor: 'middle',
              x,
              y: y + 1.3,
              hasRim: true,
            } as const,
          ]),
    ];
  }).flat();
};
