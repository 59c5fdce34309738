import type { GroundPoint } from '../../geometry/hull.ts';
import { radiansFromDegrees } from '../../units/angle.ts';
import type { FieldCard } from '../field-card.ts';
import type { Shape } from '../sheet/shapes.ts';
import type { PlanFrame } from './plan-frame.ts';
import { closedPath, openPath, stroke } from './strokes.ts';

/** A camera from above with its lens up the paper, millimetres round its middle. */
const outline: readonly GroundPoint[] = [
  [-3, -1],
  [-1.4, -1],
  [-1.4, -3],
  [1.4, -3],
  [1.4, -1],
  [3, -1],
  [3, 2],
  [-3, 2],
];

const turnedBy =
  (turn: number) =>
  ([x, y]: GroundPoint): GroundPoint => [
    x * Math.cos(turn) - y * Math.sin(turn),
    x * Math.sin(turn) + y * Math.cos(turn),
  ];

/** The camera, and the edges of its picture over the ground as two lines out past the plan. */
export const cameraShapes = (
  { camera }: Pick<FieldCard, 'camera'>,
  { place, way, box }: PlanFrame,
  northDegrees: number,
): Shape[] => {
  const [x, y] = place(camera.place);
  const bearing = radiansFromDegrees((camera.bearingDegrees ?? northDegrees) - northDegrees);
  const [dx, dy] = way([Math.sin(bearing), Math.cos(bearing)]);
  // 0 = up the paper, clockwise
  const turn = Math.atan2(dx, -dy);
  const half = radiansFromDegrees(camera.halfFieldDegrees);
  const reach = 2 * (box.width + box.height);
  const edgeAt = (t: number): GroundPoint => [x + reach * Math.sin(t), y - reach * Math.cos(t)];
  const body = outline.map(turnedBy(turn)).map(([ax, ay]): GroundPoint => [x + ax, y + ay]);
  const edges: Shape[] =
    camera.bearingDegrees === null
      ? []
      : [
          {
            kind: 'path',
            path: openPath([edgeAt(turn - half), [x, y], edgeAt(turn + half)]),
            width: stroke,
            fill: 'none',
          },
        ];
  return [...edges, { kind: 'path', path: closedPath(body), width: stroke, fill: 'black' }];
};
