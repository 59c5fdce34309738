import type { GroundPoint } from '../../../core/geometry/hull.ts';
import type { Camera } from '../../../core/setup/schema/setup.ts';
import { levelForward, type PlanView, planHalf, toPlan } from './plan-view.ts';

/** SVG path through points, closed. */
export const pathOf = (points: readonly GroundPoint[]): string =>
  points.length < 2 ? '' : `M${points.map(([x, y]) => `${x.toFixed(2)} ${y.toFixed(2)}`).join('L')}Z`;

/** SVG path through several outlines. */
export const pathOfAll = (outlines: readonly (readonly GroundPoint[])[]): string => outlines.map(pathOf).join('');

/** A circle as a path. */
export const circlePath = ([x, y]: GroundPoint, radius: number): string => {
  const r = radius.toFixed(2);
  return `M${(x - radius).toFixed(2)} ${y.toFixed(2)}a${r} ${r} 0 1 0 ${2 * Number(r)} 0a${r} ${r} 0 1 0 ${-2 * Number(r)} 0Z`;
};

/** A wedge from a lamp at (x, y) toward its aim, (dx, dy) away, as wide as the beam; a circle where it shines all round. */
export const wedgePath = (x: number, y: number, dx: number, dy: number, beamDegrees: number): string => {
  const reach = Math.hypot(dx, dy);
  if (beamDegrees >= 360) return circlePath([x, y], reach);
  const half = (Math.min(beamDegrees, 170) * Math.PI) / 360;
  const turn = Math.atan2(dy, dx);
  const edge = (side: 1 | -1) => {
    const t = turn + side * half;
    return `${(x + reach * Math.cos(t)).toFixed(2)} ${(y + reach * Math.sin(t)).toFixed(2)}`;
  };
  const radius = reach.toFixed(2);
  return `M${x.toFixed(2)} ${y.toFixed(2)}L${edge(-1)}A${radius} ${radius} 0 0 1 ${edge(1)}Z`;
};

/** Direction on the drawing that the camera looks in, radians from the drawing's right, clockwise. */
export const cameraTurn = (view: PlanView, camera: Camera): number => {
  const [x, y] = toPlan({ ...view, centre: [0, 0], unitsPerMetre: 1 }, levelForward(camera));
  return Math.atan2(y, x);
};

/** The picture's left and right edges as two lines over the ground, out beyond the drawing. */
export const frameEdgesPath = (view: PlanView, camera: Camera): string => {
  const [x, y] = toPlan(view, camera.position);
  const turn = cameraTurn(view, camera);
  const isUpright = Math.abs(Math.sin((camera.rollDegrees * Math.PI) / 180)) > 0.7;
  const { widthMm, heightMm } = camera.sensor;
  const half = Math.atan((isUpright ? heightMm : widthMm) / 2 / camera.focalLengthMm);
  const reach = planHalf * 3;
  const edge = (side: 1 | -1) => {
    const t = turn + side * half;
    return `${(x + reach * Math.cos(t)).toFixed(2)} ${(y + reach * Math.sin(t)).toFixed(2)}`;
  };
  return `M${edge(-1)}L${x.toFixed(2)} ${y.toFixed(2)}L${edge(1)}`;
};

/** A camera from above, its lens toward the drawing's top. */
export const cameraOutline: readonly GroundPoint[] = [
  [-9, -4],
  [-5, -4],
  [-3, -9],
  [3, -9],
  [5, -4],
  [9, -4],
  [9, 7],
  [-9, 7],
];
