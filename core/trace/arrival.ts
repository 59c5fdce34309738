import type { Vec3 } from '../geometry/vec.ts';
import type { Pose } from '../photometry/emitter.ts';
import type { HazeNumbers } from './haze-light.ts';
import type { MomentsTaken } from './moments-taken.ts';

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

/** No light at all. */
export const nothing: Arrival = { lux: 0, toLight: [0, 1, 0], limit: 0, lamp: null, isAllRound: false };
