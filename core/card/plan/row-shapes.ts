import type { GroundPoint } from '../../geometry/hull.ts';
import type { CardRow } from '../card-row.ts';
import type { Shape } from '../sheet/shapes.ts';
import { capMm, type } from '../sheet/type.ts';
import { circleRadius, type PlacedCircle } from './place-circles.ts';
import type { PlanFrame } from './plan-frame.ts';
import { arrowHead, openPath, stroke, wayDash } from './strokes.ts';

/** A numbered circle, the same on the plan and before its row. */
export const numberCircle = (number: number, [x, y]: GroundPoint, radius = circleRadius): Shape[] => [
  { kind: 'circle', name: `number-${number}`, x, y, radius, width: stroke, fill: 'white' },
  {
    kind: 'text',
    text: String(number),
    style: type.strongNumeral,
    anchor: 'middle',
    x,
    y: y + capMm(type.strongNumeral) / 2,
  },
];

/** Places that lie nearer to each other than this on paper are one, millimetres. */
const restsMm = 1e-3;

/** The way of a lamp that moves: dashed, with an arrow at its end. */
export const wayShapes = ({ way }: CardRow, { place }: PlanFrame): Shape[] => {
  const places = way.map(place);
  const last = places.at(-1) as GroundPoint;
  // a lamp may rest at its end: the arrow goes by where it last came from
  const before = places.findLast((place) => Math.hypot(last[0] - place[0], last[1] - place[1]) > restsMm);
  if (!before) return [];
  return [
    { kind: 'path', path: openPath(places), width: stroke, fill: 'none', dash: wayDash },
    arrowHead(last, [last[0] - before[0], last[1] - before[1]]),
  ];
};

/** From the spot of a lamp to the tip of the arrow that says which way it points, millimetres. */
const aimReach = { from: circleRadius, to: circleRadius + 6 };

/** A short arrow toward what the lamp is aimed at. */
export const aimShapes = (
  { start: { aim, place: from } }: CardRow,
  { spot, isAside }: PlacedCircle,
  { place }: PlanFrame,
): Shape[] => {
  const [x, y] = spot;
  const [tx, ty] = place(aim);
  const away = Math.hypot(tx - x, ty - y);
  const reach = isAside ? { from: 0.8, to: 6 } : aimReach;
  if (away < reach.to || Math.hypot(aim[0] - from[0], aim[1] - from[1]) < 0.2) return [];
  const [ux, uy] = [(tx - x) / away, (ty - y) / away];
  const tip: GroundPoint = [x + reach.to * ux, y + reach.to * uy];
  return [
    { kind: 'line', x1: x + reach.from * ux, y1: y + reach.from * uy, x2: tip[0], y2: tip[1], width: stroke },
    arrowHead(tip, [ux, uy]),
  ];
};

/** The leader from a stand point to its circle, where that was moved aside: a dot and a line. */
export const leaderShapes = ({ number }: CardRow, { spot, middle, isAside }: PlacedCircle): Shape[] =>
  isAside
    ? [
        { kind: 'line', x1: spot[0], y1: spot[1], x2: middle[0], y2: middle[1], width: stroke },
        { kind: 'circle', name: `spot-${number}`, x: spot[0], y: spot[1], radius: 0.8, width: 0, fill: 'black' },
      ]
    : [];
