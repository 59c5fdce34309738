import type { GroundPoint } from '../../geometry/hull.ts';
import type { Shape } from '../sheet/shapes.ts';
import { type } from '../sheet/type.ts';
import { circleRadius, type PlacedCircle } from './place-circles.ts';
import type { PlanFrame } from './plan-frame.ts';
import { stroke } from './strokes.ts';

/** From the edge of the plan to the hours, millimetres. */
const inset = 4.5;

/** Kept free round a number: of lines, and of the camera, millimetres. */
const free = { line: 3, camera: 6 };

const fromSegment = ([x, y]: GroundPoint, [ax, ay]: GroundPoint, [bx, by]: GroundPoint): number => {
  const [dx, dy] = [bx - ax, by - ay];
  const t = Math.min(Math.max(((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy || 1), 0), 1);
  return Math.hypot(x - ax - t * dx, y - ay - t * dy);
};

/** What lies on the plan that a number must not lie on, on paper. */
export interface KeptClear {
  readonly camera: GroundPoint;
  /** Where lamps truly are. */
  readonly spots: readonly GroundPoint[];
  readonly lines: readonly (readonly GroundPoint[])[];
}

/**
 * The hours round the mark, camera at six, as far out as the plan lets them; one that would lie on a circle, a stand
 * point, the camera or a way is left out.
 */
export const clockShapes = (
  { box }: PlanFrame,
  mark: GroundPoint,
  circles: readonly PlacedCircle[],
  { camera, spots, lines }: KeptClear,
): Shape[] => {
  const radius =
    Math.min(mark[0] - box.x, box.x + box.width - mark[0], mark[1] - box.y, box.y + box.height - mark[1]) - inset;
  return Array.from({ length: 12 }, (_, h): Shape[] => {
    const hour = h + 1;
    // six is down the paper; hours go clockwise
    const turn = (hour * Math.PI) / 6;
    const at = (r: number): GroundPoint => [mark[0] + r * Math.sin(turn), mark[1] - r * Math.cos(turn)];
    const [x, y] = at(radius);
    const near = (place: GroundPoint, least: number) => Math.hypot(place[0] - x, place[1] - y) < least;
    const isHidden =
      circles.some(({ middle }) => near(middle, circleRadius + 2.6)) ||
      spots.some((spot) => near(spot, free.line)) ||
      near(camera, free.camera) ||
      lines.some((line) => line.slice(1).some((to, i) => fromSegment([x, y], line[i] as GroundPoint, to) < free.line));
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
