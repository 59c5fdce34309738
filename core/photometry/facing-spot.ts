import { discFromSquare } from '../geometry/disc-from-square.ts';
import { add, basisAround, dot, length, scale, sub, type Vec3 } from '../geometry/vec.ts';
import { axesOf, type Emitter, type EmitterSpot, emitterSpot, type Pose } from './emitter.ts';

/** A spot drawn for one place, and how many times denser spots lie there than spread evenly over the skin. */
export interface FacingSpot extends EmitterSpot {
  readonly crowding: number;
}

/** A place no farther off than this share of a round lamp's radius counts as on its skin: no spots are sought that face it. */
const onSkin = 1 + 1e-4;

/** How a tube lies to a place: the two ends along it, from the foot of the place, and how far off and which way the place is. */
interface TubeView {
  readonly start: number;
  readonly end: number;
  readonly gap: number;
  /** Unit, from the tube to the place, square to the tube. */
  readonly toward: Vec3;
  /** Unit, along the tube. */
  readonly first: Vec3;
  /** Angle that the tube takes up along itself, seen from the place. */
  readonly range: number;
  /** Sine of the farthest that spots which face the place lie round the tube. */
  readonly sinRound: number;
}

const tubeView = ({ halfWidthMetres: w, halfHeightMetres: r }: Emitter, pose: Pose, place: Vec3): TubeView | null => {
  const { first } = axesOf(pose);
  const offset = sub(place, pose.position);
  const foot = dot(offset, first);
  const across = sub(offset, scale(first, foot));
  const gap = length(across);
  if (gap <= r * onSkin) return null;
  const [start, end] = [-w - foot, w - foot];
  const range = Math.atan2(gap * (end - start), gap * gap + start * end);
  return { start, end, gap, toward: scale(across, 1 / gap), first, range, sinRound: Math.sqrt(1 - (r / gap) ** 2) };
};

/** `past`: how far along the tube from the foot of the place. */
const tubeCrowding = ({ start, end, gap, range, sinRound }: TubeView, past: number, cosRound: number): number =>
  ((gap * (end - start)) / (range * (gap * gap + past * past))) * ((Math.PI * cosRound) / sinRound);

/**
 * Along the tube evenly by the angle that the place sees, which makes spots as much denser as they count for more (as
 * Kulla and Fajardo 2012 do along a ray); round it evenly by the width that shows.
 */
const tubeSpot = (emitter: Emitter, pose: Pose, place: Vec3, u: number, v: number): FacingSpot | null => {
  const view = tubeView(emitter, pose, place);
  if (!view) return null;
  const { start, gap, toward, first, range, sinRound } = view;
  const [sin, cos] = [Math.sin(u * range), Math.cos(u * range)];
  const past = (gap * (start * cos + gap * sin)) / (gap * cos - start * sin);
  const sideways = (2 * v - 1) * sinRound;
  const cosRound = Math.sqrt(1 - sideways * sideways);
  const { second, axis } = axesOf(pose);
  // a quarter turn on from `toward`, round the tube
  const beside = sub(scale(axis, dot(toward, second)), scale(second, dot(toward, axis)));
  const normal = add(scale(toward, cosRound), scale(beside, sideways));
  const along = past - start - emitter.halfWidthMetres;
  const spot = add(add(pose.position, scale(first, along)), scale(normal, emitter.halfHeightMetres));
  return { spot, normal, crowding: tubeCrowding(view, past, cosRound) };
};

/** Share of a globe's outline that shows from a distance, as a disc: the square of the sine that it reaches to. */
const shownShare = (radius: number, distance: number): number => 1 - (radius / distance) ** 2;

/** Evenly over the disc that the globe shows. */
const sphereSpot = (
  { halfWidthMetres: r }: Emitter,
  pose: Pose,
  place: Vec3,
  u: number,
  v: number,
): FacingSpot | null => {
  const offset = sub(place, pose.position);
  const distance = length(offset);
  if (distance <= r * onSkin) return null;
  const toward = scale(offset, 1 / distance);
  const shown = shownShare(r, distance);
  const [a, b] = discFromSquare(u, v).map((x) => x * Math.sqrt(shown)) as [number, number];
  const cos = Math.sqrt(Math.max(1 - a * a - b * b, 0));
  const { first, second } = basisAround(toward);
  const normal = add(scale(toward, cos), add(scale(first, a), scale(second, b)));
  return { spot: add(pose.position, scale(normal, r)), normal, crowding: (4 * cos) / shown };
};

/**
 * A spot on an emitter for light at a place, for two numbers in [0, 1); (0.5, 0.5) is the middle, which stands for the
 * whole lamp. On round lamps it faces the place and is drawn about as often as it counts; on flat ones, and for a place on
 * the skin, spots are even. Divide what the spot sends by its crowding.
 */
export const facingSpot = (emitter: Emitter, pose: Pose, place: Vec3, u: number, v: number): FacingSpot => {
  const isMiddle = u === 0.5 && v === 0.5;
  const { shape } = emitter;
  const facing =
    isMiddle || (shape !== 'tube' && shape !== 'sphere')
      ? null
      : (shape === 'tube' ? tubeSpot : sphereSpot)(emitter, pose, place, u, v);
  return facing ?? { ...emitterSpot(emitter, pose, u, v), crowding: 1 };
};

/** Crowding of `facingSpot` at a spot that faces the place, however it was found. */
export const crowdingAt = (emitter: Emitter, pose: Pose, place: Vec3, { spot, normal }: EmitterSpot): number => {
  if (!normal) return 1;
  const offset = sub(place, pose.position);
  if (emitter.shape === 'sphere') {
    const distance = length(offset);
    if (distance <= emitter.halfWidthMetres * onSkin) return 1;
    return (4 * Math.max(dot(normal, offset) / distance, 0)) / shownShare(emitter.halfWidthMetres, distance);
  }
  const view = tubeView(emitter, pose, place);
  if (!view) return 1;
  const past = dot(sub(spot, place), view.first);
  return tubeCrowding(view, past, Math.max(dot(normal, view.toward), 0));
};
