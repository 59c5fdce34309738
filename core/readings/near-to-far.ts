import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { distance } from '../geometry/vec.ts';
import { stopsFromRatio } from '../units/stops.ts';
import { poseAt, type World, type WorldLight } from '../world/world.ts';
import { type FaceLight, litBy } from './face-light.ts';
import { percentile } from './percentile.ts';
import { raking } from './relief-reading.ts';
import { sightOf } from './sight.ts';

/** How the light of a pass falls off along its subject, from the end that is nearest to the lamp. */
export interface NearToFar {
  readonly subjectName: string;
  readonly nearOverMiddleStops: number;
  readonly nearOverFarStops: number;
  /** Angle between ray and surface that half of the lit points have less of, degrees: small where the lamp rakes it. */
  readonly grazingDegrees: number;
  /** What the near end sends to the camera over the pass, cd s / m^2. */
  readonly nearLuminanceSeconds: number;
}

/** Shares of the lit points, by distance from the lamp, that are its near end, middle and far end. */
const [near, middle, far] = [
  [0, 0.15],
  [0.35, 0.65],
  [0.85, 1],
] as const;

/** A lamp that is walked farther than this has no near end of its own, metres. */
const stepMetres = 0.5;

/** With fewer lit points an end is a single ray or two. */
const fewestPoints = 20;
/** With less of the face lit it is a rim, which has no near end to speak of. */
const fewestShare = 0.3;

const alongFace = (
  face: FaceLight,
  { source, strength, seconds }: WorldLight,
): Omit<NearToFar, 'subjectName'> | null => {
  if (source.kind !== 'lamp') return null;
  const { position } = poseAt(source, 0.5);
  if (source.path.some((point) => distance(point.position, position) > stepMetres)) return null;
  const isLit = litBy(source);
  const lit = face
    .filter(({ point, lux }) => isLit(point, lux))
    .map(({ point, lux, reflectance }) => ({
      metres: distance(position, point.place),
      lux,
      sent: lux * reflectance,
      grazing: raking(point.place, point.normal, position).grazingDegrees,
    }))
    .sort((a, b) => a.metres - b.metres);
  if (lit.length < Math.max(fewestPoints, fewestShare * face.length)) return null;
  const median = ([from, to]: readonly [number, number], of: 'lux' | 'sent' | 'grazing'): number => {
    const part = lit.slice(Math.floor(from * lit.length), Math.ceil(to * lit.length));
    return percentile(
      part.map((each) => each[of]),
      0.5,
    );
  };
  return {
    nearOverMiddleStops: stopsFromRatio(median(near, 'lux') / median(middle, 'lux')),
    nearOverFarStops: stopsFromRatio(median(near, 'lux') / median(far, 'lux')),
    grazingDegrees: median([0, 1], 'grazing'),
    nearLuminanceSeconds: (median(near, 'sent') * luminanceOfLinearSrgb(strength) * seconds) / Math.PI,
  };
};

/**
 * Reads near, middle and far of the lit part of what the camera sees of a subject, each by its median: facets that turn to
 * the lamp or away from it, joints and small shadows do not count, as they would between the brightest and the darkest
 * point.
 *
 * @returns null where there is no such subject, too little of it is lit, or the lamp is walked past it
 */
export const nearToFar = ({ stage, view }: World, light: WorldLight, subjectId: string | null): NearToFar | null => {
  const at = stage.subjects.findIndex(({ id }) => id === subjectId);
  const subject = stage.subjects[at];
  const read = subject && alongFace(sightOf(stage, view).faceLight(at, light.source), light);
  return read ? { ...read, subjectName: subject.name } : null;
};
