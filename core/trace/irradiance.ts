import { anyHit } from '../geometry/cast-ray.ts';
import { discFromSquare } from '../geometry/disc-from-square.ts';
import { add, basisAround, dot, normalize, scale, type Vec3 } from '../geometry/vec.ts';
import type { Pose } from '../photometry/emitter.ts';
import { openLampSample } from '../photometry/open-light.ts';
import { domeSteps } from '../sky/dome-cells.ts';
import { harmonicLux } from '../sky/dome-harmonics.ts';
import type { DomeLight } from '../sky/dome-light.ts';
import { domeLightOf } from '../sky/dome-of.ts';
import { isInTheWay } from '../walk/body.ts';
import { type Air, throughAir } from '../world/air.ts';
import { forwardness } from '../world/air-light.ts';
import type { Stage } from '../world/stage.ts';
import { poseAt, type Source } from '../world/world.ts';
import type { HazeNumbers } from './haze-light.ts';
import { drawnByWeight, type LampSource, type MomentsTaken } from './moments-taken.ts';
import { scatteredDirection, throughToSky } from './through-air.ts';

/** A receiver: the place that light falls on, where shadow rays start, and the normal that the cosine is taken with. */
export interface Receiver {
  /** Distance and angles are taken from here, so that the step off the surface does not enter the inverse square. */
  readonly place: Vec3;
  readonly shadowOrigin: Vec3;
  readonly normal: Vec3;
}

/** The random numbers of one sample. */
export interface SampleNumbers {
  readonly u: number;
  readonly v: number;
  /** Moment that a lamp is taken at, share of its on-time, 0 to 1; not asked where `taken` is given. */
  readonly time: number;
  /** Of the light of haze, where pictures are traced; left out, haze sends none. */
  readonly haze?: HazeNumbers;
  /** Several moments of a lamp together, as pictures are traced. */
  readonly taken?: TakenTogether;
}

/** Moments of a lamp that one sample takes light from together. */
export interface TakenTogether extends MomentsTaken {
  /** Number in [0, 1) that draws the moment that the shadow is traced for. */
  readonly choice: number;
  /** At which moments the receiver is out of sight behind whoever holds the lamp. */
  readonly isHidden?: readonly boolean[] | undefined;
}

/** Shadow rays end this share short of the lamp, so that nothing at the lamp itself blocks them. */
const reach = 1 - 1e-5;

/** Light from one direction on its way to a receiver, whatever may stand between. */
export interface Arrival {
  /** Per unit strength of the source, with the receiver's cosine; 0 where it comes from behind. */
  readonly lux: number;
  /** Unit. */
  readonly toLight: Vec3;
  /** What stands nearer than this in that direction keeps it off. */
  readonly limit: number;
  /** Of a lamp: how it stands, which spot of it is meant, and where its holder stands who is drawn. */
  readonly lamp: {
    readonly pose: Pose;
    readonly distance: number;
    readonly spotNormal: Vec3 | null;
    readonly crowding: number;
    readonly feet: Vec3 | null;
  } | null;
  /** Whether it stands for light from all of the sky at once, or for some of haze's: sheens show neither by its direction. */
  readonly isAllRound: boolean;
}

type MoonSource = Extract<Source, { kind: 'moon' }>;

const farAway = 1e5;
const nothing: Arrival = { lux: 0, toLight: [0, 1, 0], limit: 0, lamp: null, isAllRound: false };

/**
 * Of a lamp taken at several moments all count for the light, and one drawn by its light for the shadow: as good as their
 * mean over many samples (resampled importance sampling, Talbot, Cline and Egbert 2005), with one ray for all of them.
 * Haze takes of it by the way from the moment drawn.
 */
const lampArrival = (air: Air | null, source: LampSource, receiver: Receiver, numbers: SampleNumbers): Arrival => {
  const { u, v, time, taken } = numbers;
  const poses = taken?.poses ?? [poseAt(source, time)];
  const samples = poses.map((pose) => openLampSample(source.emitter, pose, receiver, u, v));
  const weights = samples.map(({ lux }, m) => (taken?.isHidden?.[m] ? 0 : lux));
  const m = drawnByWeight(weights, taken?.choice ?? 0);
  if (m < 0) return nothing;
  const { toLamp, distance, spotNormal, crowding } = samples[m] as (typeof samples)[number];
  const lamp = { pose: poses[m] as Pose, distance, spotNormal, crowding, feet: taken?.feet?.[m] ?? null };
  const lux = weights.reduce((sum, weight) => sum + weight, 0) / poses.length;
  const through = throughAir(air, distance);
  return { lux: lux * through, toLight: toLamp, limit: distance * reach, lamp, isAllRound: false };
};

/**
 * The moon through haze, and what haze by its light sends to the ground: as bright as it is seen, see `airLight`, but on
 * level ground no more than haze takes of the moon. What it sends upward, or scatters again, is left out. A sample takes the
 * moon as often as its light gets through, else a direction of the haze. Sample 0 takes all of it from the moon: of scattered
 * light the share that goes on with it, its mean cosine.
 */
const moonArrival = (
  air: Air | null,
  { toward, radiusRadians }: MoonSource,
  { place, normal }: Receiver,
  { u, v }: SampleNumbers,
): Arrival => {
  const common = { limit: farAway, lamp: null };
  const straight = throughToSky(air, { origin: place, direction: toward });
  const isMiddle = u === 0.5 && v === 0.5;
  if (isMiddle || u < straight) {
    const { first, second } = basisAround(toward);
    const [a, b] = discFromSquare(isMiddle ? u : u / straight, v).map((x) => x * radiusRadians) as [number, number];
    const toLight = normalize(add(toward, add(scale(first, a), scale(second, b))));
    const share = isMiddle ? straight + (1 - straight) * forwardness : 1;
    return { ...common, lux: Math.max(dot(normal, toLight), 0) * share, toLight, isAllRound: false };
  }
  const toLight = scatteredDirection(toward, (u - straight) / (1 - straight), v);
  if (toLight[1] <= 0) return nothing;
  const seen = 1 - throughToSky(air, { origin: place, direction: toLight });
  const taken = ((1 - straight) * Math.max(toward[1], 0)) / toLight[1];
  const lux = (Math.min(seen, taken) * Math.max(dot(normal, toLight), 0)) / (1 - straight);
  return { ...common, lux, toLight, isAllRound: true };
};

/**
 * What one sample of a source sends to a receiver. Haze is taken to send on as much of an even sky's light as it takes, so
 * that skies light the land as in clear air.
 */
export const arrivalOf = ({ air }: Stage, source: Source, receiver: Receiver, numbers: SampleNumbers): Arrival => {
  switch (source.kind) {
    case 'lamp':
      return lampArrival(air, source, receiver, numbers);
    case 'moon':
      return moonArrival(air, source, receiver, numbers);
    case 'sky':
      return skyArrival(receiver.normal, numbers);
    case 'dome': {
      const dome = domeLightOf(source.of);
      return dome ? domeArrival(dome, receiver.normal, numbers) : nothing;
    }
    case 'seen-sky':
      return nothing;
  }
};

/** Whether the light reaches the receiver, past things and past whoever holds the lamp. */
export const arrives = (stage: Stage, { shadowOrigin }: Receiver, { lux, toLight, limit, lamp }: Arrival): boolean => {
  if (lux <= 0) return false;
  if (lamp?.feet && isInTheWay(lamp.feet, shadowOrigin, add(shadowOrigin, scale(toLight, limit)))) return false;
  return !anyHit(stage.tree, shadowOrigin, toLight, limit);
};

/**
 * One sample of the illuminance that a source at unit strength puts on a receiver, in lux (per lumen or per lux of
 * source). Inverse square, cosine, visibility. The mean over samples is the estimator that both renderers share.
 */
export const irradianceSample = (stage: Stage, source: Source, receiver: Receiver, numbers: SampleNumbers): number => {
  const arrival = arrivalOf(stage, source, receiver, numbers);
  return arrives(stage, receiver, arrival) ? arrival.lux : 0;
};

/**
 * An even dome of 1 lux on level ground, sampled by the cosine round the normal. Sample 0 stands for the whole dome: it
 * looks along the normal, or straight up where that is level or below, and weighs by the dome's share above the surface.
 */
const skyArrival = (normal: Vec3, { u, v }: SampleNumbers): Arrival => {
  const common = { limit: farAway, lamp: null };
  if (u === 0.5 && v === 0.5) {
    const toLight: Vec3 = normal[1] > 0 ? normal : [0, 1, 0];
    return { ...common, lux: Math.max((1 + normal[1]) / 2, 0), toLight, isAllRound: true };
  }
  const toLight = cosineDirection(normal, u, v);
  return { ...common, lux: toLight[1] > 0 ? 1 : 0, toLight, isAllRound: false };
};

/**
 * A sky as it is spread over the dome: one of its directions of equal light, drawn by both numbers. Sample 0 stands for the
 * whole dome as in `skyArrival`, and looks half-way between the normal and where the light comes from on the whole.
 */
const domeArrival = (dome: DomeLight, normal: Vec3, { u, v }: SampleNumbers): Arrival => {
  const common = { limit: farAway, lamp: null };
  if (u === 0.5 && v === 0.5) {
    const half = add(normal, dome.middle);
    const toLight = dot(half, half) > 0.01 && half[1] > 0 ? normalize(half) : dome.middle;
    return { ...common, lux: harmonicLux(dome.harmonics, normal), toLight, isAllRound: true };
  }
  const at = 3 * (Math.floor(v * domeSteps) * domeSteps + Math.floor(u * domeSteps));
  const { directions } = dome;
  const toLight: Vec3 = [directions[at] as number, directions[at + 1] as number, directions[at + 2] as number];
  return { ...common, lux: dome.luxAllRound * Math.max(dot(normal, toLight), 0), toLight, isAllRound: false };
};

/** A direction over a surface, more often the nearer to its normal: density cos / pi. Two numbers in [0, 1). */
export const cosineDirection = (normal: Vec3, u: number, v: number): Vec3 => {
  const { first, second } = basisAround(normal);
  const r = Math.sqrt(u);
  const around = add(scale(first, r * Math.cos(2 * Math.PI * v)), scale(second, r * Math.sin(2 * Math.PI * v)));
  return normalize(add(scale(normal, Math.sqrt(Math.max(1 - u, 0))), around));
};
