import { add, basisAround, scale, type Vec3 } from '../../../core/geometry/vec.ts';
import { isMeasured } from '../../../core/photometry/beam.ts';
import { type Emitter, type Pose, spotIntensityPerLumen } from '../../../core/photometry/emitter.ts';

/** Half of a plane through a lamp's axis. */
export interface HalfPlane {
  /** Candela per lumen, one for each angle of the curve. */
  readonly perLumen: readonly number[];
  /**
   * The last angle in front of the lamp with half the peak; light that goes on past 90 degrees is followed to its end, 180
   * when it never falls that far. Null when it is never that bright in front.
   */
  readonly halfDegrees: number | null;
}

/** A plane through the axis: its half planes to one side and to the other. */
export type BeamPlane = readonly [HalfPlane, HalfPlane];

/** A lamp's intensity against the angle off its axis. */
export interface BeamCurve {
  /** Rising from 0 to 180. */
  readonly offAxisDegrees: readonly number[];
  /** One plane where all are alike; else two, square to each other: 0-180 and 90-270. */
  readonly planes: readonly BeamPlane[];
  /** Over all planes, those between the drawn ones too. */
  readonly peakPerLumen: number;
}

const pose: Pose = { position: [0, 0, 0], axis: [0, 0, -1] };
const { first, second } = basisAround(pose.axis);
const steps = 180;
/** Degrees to either side of a hard edge. */
const sharp = 1e-6;
const besideAxis = 1e-9;
/** Planes between the drawn ones are searched for the peak in so many places at most: in every n-th angle of large files. */
const mostPeakSamples = 10_000;

const intensity = (emitter: Emitter, offAxisDegrees: number, roundRadians: number): number => {
  // on the axis itself there is no way round: a file may differ from plane to plane even there
  const angle = (Math.min(Math.max(offAxisDegrees, besideAxis), 180 - besideAxis) * Math.PI) / 180;
  const across = add(scale(first, Math.cos(roundRadians)), scale(second, -Math.sin(roundRadians)));
  const direction: Vec3 = add(scale(pose.axis, Math.cos(angle)), scale(across, Math.sin(angle)));
  return spotIntensityPerLumen(emitter, pose, direction, null);
};

/** Angles close together near the axis, with the file's own ones, and both sides of every hard edge. */
const anglesFor = ({ beam, front }: Emitter): number[] => {
  const degrees = (radians: number) => (radians * 180) / Math.PI;
  const edges = [
    ...(isMeasured(beam) ? [] : [degrees(Math.acos(beam.cosSpill))]),
    ...(front ? [degrees(Math.acos(front.cosSnoot))] : []),
  ];
  const own = isMeasured(beam) ? [...beam.distribution.verticalRadians].map(degrees) : [];
  const all = [
    ...Array.from({ length: steps + 1 }, (_, i) => 180 * (i / steps) ** 2),
    ...own,
    ...edges.flatMap((edge) => [edge - sharp, edge + sharp]),
  ];
  return [...new Set(all)].filter((angle) => angle >= 0 && angle <= 180).sort((a, b) => a - b);
};

/** Where the intensity falls through half the peak, between two angles. */
const crossing = (at: (degrees: number) => number, half: number, inside: number, outside: number): number => {
  let [low, high] = [inside, outside];
  for (let i = 0; i < 30; i++) {
    const middle = (low + high) / 2;
    if (at(middle) >= half) low = middle;
    else high = middle;
  }
  return low;
};

/** Reads a lamp's beam off its emitter, as dressed. Planes of measured beams are those of the file, whatever its turn. */
export const beamCurve = (emitter: Emitter): BeamCurve => {
  const { beam, shape } = emitter;
  const offAxisDegrees = anglesFor(emitter);
  const turn = isMeasured(beam) ? beam.turnRadians : 0;
  const rounds = isMeasured(beam) ? [...beam.distribution.horizontalRadians].map((round) => round + turn) : [0];
  const isRound = shape !== 'tube' && rounds.length <= 2;
  const quarters = isRound ? [0, 2] : [0, 2, 1, 3];
  const drawn = quarters.map((quarter) => turn + (quarter * Math.PI) / 2);
  const sample = (round: number) => offAxisDegrees.map((angle) => intensity(emitter, angle, round));
  const sampled = drawn.map(sample);
  const stride = Math.ceil((rounds.length * offAxisDegrees.length) / mostPeakSamples);
  const someAngles = offAxisDegrees.filter((_, i) => i % stride === 0);
  const others = isRound ? [] : rounds.map((round) => someAngles.map((angle) => intensity(emitter, angle, round)));
  const peakPerLumen = [...sampled, ...others].flat().reduce((most, value) => Math.max(most, value), 0);
  const half = peakPerLumen / 2;
  const halves = sampled.map((perLumen, i): HalfPlane => {
    const from = perLumen.findLastIndex((value, k) => value >= half && (offAxisDegrees[k] as number) <= 90);
    if (from < 0 || peakPerLumen === 0) return { perLumen, halfDegrees: null };
    const outside = perLumen.findIndex((value, k) => k > from && value < half);
    if (outside < 0) return { perLumen, halfDegrees: 180 };
    const at = (degrees: number) => intensity(emitter, degrees, drawn[i] as number);
    const [inner, outer] = [offAxisDegrees[outside - 1] as number, offAxisDegrees[outside] as number];
    return { perLumen, halfDegrees: crossing(at, half, inner, outer) };
  });
  const pair = (at: number): BeamPlane => [halves[at] as HalfPlane, halves[at + 1] as HalfPlane];
  return { offAxisDegrees, planes: isRound ? [pair(0)] : [pair(0), pair(2)], peakPerLumen };
};
