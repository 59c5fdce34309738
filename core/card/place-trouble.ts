import { type GroundPoint, isInsideHull } from '../geometry/hull.ts';
import { radiansFromDegrees } from '../units/angle.ts';
import type { CardStand } from './card-row.ts';
import type { FieldCard } from './field-card.ts';

/** Why one can't stand somewhere: before the subject in the picture, or in something that stands there. */
export type PlaceTrouble = 'in-picture' | 'in-something';

const along = (from: GroundPoint, to: GroundPoint, [east, north]: GroundPoint): number =>
  (to[0] - from[0]) * east + (to[1] - from[1]) * north;

/** Between the two lines of the plan, and nearer to the camera than the mark. Level ground is taken for granted. */
const isInPicture = ({ camera, mark }: FieldCard, place: GroundPoint): boolean => {
  const [east, north] = [camera.aim[0] - camera.place[0], camera.aim[1] - camera.place[1]];
  const length = Math.hypot(east, north);
  if (length < 1e-6) return false;
  const [axis, right]: GroundPoint[] = [
    [east / length, north / length],
    [north / length, -east / length],
  ];
  const depth = along(camera.place, place, axis as GroundPoint);
  const aside = Math.abs(along(camera.place, place, right as GroundPoint));
  if (depth <= 0 || depth >= along(camera.place, mark.place, axis as GroundPoint)) return false;
  return aside < depth * Math.tan(radiansFromDegrees(camera.halfFieldDegrees));
};

const troubleAt = (card: FieldCard, place: GroundPoint): PlaceTrouble | null => {
  if (card.solids.some((hull) => isInsideHull(hull, place))) return 'in-something';
  return isInPicture(card, place) ? 'in-picture' : null;
};

/** What is wrong with a place that a lamp was moved to; null where nothing is, or where the plan has it so already. */
export const placeTrouble = (card: FieldCard, planned: CardStand, moved: CardStand): PlaceTrouble | null => {
  const trouble = troubleAt(card, moved.place);
  return trouble === troubleAt(card, planned.place) ? null : trouble;
};
