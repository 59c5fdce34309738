import type { GroundPoint } from '../../../core/geometry/hull.ts';
import type { Position } from '../../../core/setup/schema/setup.ts';

/** Half the side of the drawing, in its own units. */
export const planHalf = 250;

/** How the ground lies on the drawing: camera at the bottom, what it looks at in the middle. */
export interface PlanView {
  readonly centre: GroundPoint;
  /** Level unit direction that is up on the drawing. */
  readonly up: GroundPoint;
  readonly unitsPerMetre: number;
}

/** The view for a camera, wide enough for the camera and everything in `places`. */
export const planViewOf = (camera: { position: Position; aim: Position }, places: readonly Position[]): PlanView => {
  const [east, north] = [camera.aim[0] - camera.position[0], camera.aim[1] - camera.position[1]];
  const away = Math.hypot(east, north);
  const up: GroundPoint = away > 1e-6 ? [east / away, north / away] : [0, 1];
  const centre: GroundPoint = [camera.aim[0], camera.aim[1]];
  const farthest = [camera.position, ...places].reduce(
    (most, [e, n]) => Math.max(most, Math.hypot(e - centre[0], n - centre[1])),
    2,
  );
  return { centre, up, unitsPerMetre: (planHalf * 0.84) / farthest };
};

/** Drawing place of a point on the ground. */
export const toPlan = (
  { centre, up, unitsPerMetre }: PlanView,
  [east, north]: readonly [number, number, ...number[]],
): GroundPoint => {
  const [e, n] = [east - centre[0], north - centre[1]];
  return [(e * up[1] - n * up[0]) * unitsPerMetre, -(e * up[0] + n * up[1]) * unitsPerMetre];
};

/** Point on the ground of a drawing place. */
export const fromPlan = ({ centre, up, unitsPerMetre }: PlanView, [x, y]: GroundPoint): GroundPoint => {
  const [right, ahead] = [x / unitsPerMetre, -y / unitsPerMetre];
  return [centre[0] + right * up[1] + ahead * up[0], centre[1] - right * up[0] + ahead * up[1]];
};

/** A round distance between rings: 1, 2, 5, 10 … metres, at most six rings to the edge. */
export const ringStep = ({ unitsPerMetre }: PlanView): number => {
  const reach = planHalf / unitsPerMetre;
  return [0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500].find((step) => reach / step <= 6) ?? 1000;
};

/** SVG path through points. */
export const pathOf = (points: readonly GroundPoint[]): string =>
  points.length < 2 ? '' : `M${points.map(([x, y]) => `${x.toFixed(2)} ${y.toFixed(2)}`).join('L')}Z`;
