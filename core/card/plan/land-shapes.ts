import type { GroundPoint } from '../../geometry/hull.ts';
import { areaOf } from '../../geometry/triangulate.ts';
import type { Shape } from '../sheet/shapes.ts';
import { type } from '../sheet/type.ts';
import type { PlanData } from './plan-data.ts';
import type { PlanFrame } from './plan-frame.ts';
import { closedPath, hatchOfCircle, stroke } from './strokes.ts';

/** Smaller than this on paper, millimetres, a part is a speck. */
const leastMm = 0.4;

/** Share of the plan from where on a subject is the lie of the land: one stands on it. */
const coversShare = 0.45;

const extent = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);

const isSpeck = (places: readonly GroundPoint[]): boolean =>
  Math.max(extent(places.map(([x]) => x)), extent(places.map(([, y]) => y))) < leastMm;

/** Whether a part of a subject is as large as much of the plan, as a hill is. */
const isLand = (outlines: readonly (readonly GroundPoint[])[], { place, box }: PlanFrame): boolean =>
  outlines.some((outline) => Math.abs(areaOf(outline.map(place))) > coversShare * box.width * box.height);

/** A subject as one outline: its parts stroked twice as wide first, then filled, which leaves the half that is outside. */
const subjectShapes = (outlines: readonly (readonly GroundPoint[])[], { place }: PlanFrame): Shape[] => {
  const paths = outlines
    .map((outline) => outline.map(place))
    .filter((places) => places.length > 2 && !isSpeck(places))
    .map(closedPath);
  if (paths.length === 0) return [];
  const path = paths.join('');
  return [
    { kind: 'path', path, width: 2 * stroke, fill: 'none' },
    ...paths.map((each): Shape => ({ kind: 'path', path: each, width: 0, fill: 'white' })),
  ];
};

const hazardShapes = (
  { name, position, radiusMetres }: PlanData['hazards'][number],
  { place, scale, box }: PlanFrame,
): Shape[] => {
  const [x, y] = place([position[0], position[1]]);
  const radius = (radiusMetres * 1000) / scale;
  return [
    { kind: 'circle', name: 'hazard', x, y, radius, width: stroke, fill: 'none' },
    { kind: 'path', path: hatchOfCircle([x, y], radius, box), width: stroke, fill: 'none' },
    { kind: 'text', text: name, style: type.strong, anchor: 'middle', x, y: y + 1.4, hasRim: true },
  ];
};

/** Subjects as outlines, hazards hatched and named. */
export const landShapes = ({ subjects, hazards }: PlanData, frame: PlanFrame): Shape[] => [
  ...subjects.flatMap((outlines) => (isLand(outlines, frame) ? [] : subjectShapes(outlines, frame))),
  ...hazards.flatMap((hazard) => hazardShapes(hazard, frame)),
];
