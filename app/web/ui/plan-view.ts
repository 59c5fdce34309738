import type { GroundPoint } from '../../../core/geometry/hull.ts';
import type { Camera, Position, Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { footMetres } from '../../../core/units/feet.ts';
import { pageLengths } from './lengths.ts';

/** Half the side of the drawing, in its own units. */
export const planHalf = 250;

/** How the ground lies on the drawing: camera at the bottom, what it looks at in the middle. */
export interface PlanView {
  readonly centre: GroundPoint;
  /** Level unit direction that is up on the drawing. */
  readonly up: GroundPoint;
  readonly unitsPerMetre: number;
}

/** How far out, as a share of half the drawing, the farthest thing stands; outside it is the clock. */
const farthestShare = 0.84;

/** Level unit direction that the camera looks in; north when it looks straight down or up. */
export const levelForward = ({ position, aim }: Pick<Camera, 'position' | 'aim'>): GroundPoint => {
  const [east, north] = [aim[0] - position[0], aim[1] - position[1]];
  const away = Math.hypot(east, north);
  return away > 1e-6 ? [east / away, north / away] : [0, 1];
};

/**
 * The view for a camera, wide enough for the camera and everything in `places`.
 *
 * @param share how far out the farthest of them stands, as a share of half the drawing
 */
export const planViewOf = (
  camera: Pick<Camera, 'position' | 'aim'>,
  places: readonly Position[],
  share = farthestShare,
): PlanView => {
  const centre: GroundPoint = [camera.aim[0], camera.aim[1]];
  const farthest = [camera.position, ...places].reduce(
    (most, [e, n]) => Math.max(most, Math.hypot(e - centre[0], n - centre[1])),
    2,
  );
  return { centre, up: levelForward(camera), unitsPerMetre: (planHalf * share) / farthest };
};

const placesOf = ({ frames }: Scheme): Position[] =>
  frames.flatMap(({ passes }) => passes.flatMap(({ waypoints }) => waypoints.map(({ position }) => position)));

/**
 * One view for small plans of several schemes, so that all have one scale. It lies as the first scheme's camera looks,
 * and holds every scheme's camera and lamps.
 */
export const sharedPlanView = (setup: Setup, schemes: readonly Scheme[]): PlanView => {
  const cameras = schemes.map(({ camera }) => camera ?? setup.camera);
  const places = [...cameras.map(({ position }) => position), ...schemes.flatMap(placesOf)];
  // nearer to the middle than on the large plan: its numerals are larger for their plan
  return planViewOf(cameras[0] ?? setup.camera, places, 0.74);
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

const roundSteps = [0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];

/** A round distance for rings and scale bars, metres: 1, 2, 5, 10 … of the page’s lengths, at most `most` of them to the edge. */
export const ringStep = ({ unitsPerMetre }: PlanView, most = 6): number => {
  const worth = pageLengths() === 'feet' ? footMetres : 1;
  const reach = planHalf / (unitsPerMetre * worth);
  return (roundSteps.find((step) => reach / step <= most) ?? 1000) * worth;
};

/** A multiple of such a step in words: "6 m", "20 ft". */
export const ringWords = (metres: number): string =>
  pageLengths() === 'feet' ? `${Number((metres / footMetres).toFixed(1))} ft` : `${Number(metres.toFixed(1))} m`;
