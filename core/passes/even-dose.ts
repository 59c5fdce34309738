import { add, basisAround, distance, mix, normalize, scale, sub, type Vec3 } from '../geometry/vec.ts';
import { beamAngleRadians } from '../photometry/beam-angle.ts';
import { type Emitter, emitterPeakPerLumen } from '../photometry/emitter.ts';
import type { Waypoint } from '../setup/schema/setup.ts';
import { irradianceSample } from '../trace/irradiance.ts';
import { dimension, sampleNumber } from '../trace/sequence.ts';
import { type SurfacePoint, surfaceAlong } from '../trace/surface-point.ts';
import { stopsFromRatio } from '../units/stops.ts';
import { worldFromDocument } from '../world/axes.ts';
import type { Stage } from '../world/stage.ts';
import type { Source } from '../world/world.ts';
import { dividedPath } from './divided-path.ts';
import { evenSpeedTimes } from './even-speed-times.ts';
import { evenWeights } from './even-weights.ts';
import { legsOf } from './path-legs.ts';
import type { Stroke } from './stroke.ts';
import { timesFromWeights } from './times-from-weights.ts';

/** What a lamp's path is evened on. */
export interface Swept {
  readonly stage: Stage;
  /** From where it is looked at, world metres: the camera. */
  readonly eye: Vec3;
  readonly emitter: Emitter;
  /** Of the document; at least two. */
  readonly waypoints: readonly Waypoint[];
}

export type EvenDose =
  | {
      readonly kind: 'even';
      /** The path, divided where its legs were too few, with its new times. */
      readonly waypoints: readonly Waypoint[];
      /** From the least to the greatest dose along the aims, at even speed and now; places without light left out. */
      readonly spreadBeforeStops: number;
      readonly spreadStops: number;
      readonly unlit: Unlit;
    }
  | {
      /** Nothing along the path gets light. */
      readonly kind: 'cannot';
      readonly unlit: Unlit;
    };

/**
 * Places along a path at whose aim no leg gives light, as the eye sees nothing there, or what it sees is turned away or in
 * shadow all the way: no dwell evens those. Counted in the path's waypoints as they came out, from 0; a half lies between two.
 */
export type Unlit = readonly number[];

/** How long a leg may be, as a share of the beam's full angle; and at least and most, over how far the lamp stands off. */
const [legShare, leastSpan, mostSpan] = [0.5, 0.02, 0.35];
/** No hand turns a lamp faster, and no feet carry one (our choice; no published source). */
const [mostRadiansPerSecond, mostMetresPerSecond] = [Math.PI, 2];
/** Moments of a leg that are metered, shared among the surfaces at an aim. */
const legSamples = 36;
/** What is seen round an aim is metered with it, as one joint in a wall is not the wall: a third of the beam, at most 0.3 m. */
const [roundShare, mostRoundMetres] = [0.33, 0.3];
/** Looks round an aim. */
const lookCount = 8;
/** What is seen beside an aim, but this far in front of it or behind, is something else; metres. */
const mostAwayMetres = 0.5;
/** Less than this share of what the lamp gives square on at that distance is no light but the tail of its beam. */
const leastShare = 1e-4;

/** Surfaces seen at an aim and just round it; none where the eye looks past everything. */
const surfacesAt = ({ stage, eye }: Swept, aim: Vec3, roundMetres: number): SurfacePoint[] => {
  const toAim = sub(aim, eye);
  const { first, second } = basisAround(normalize(toAim));
  const middle = surfaceAlong(stage, eye, normalize(toAim));
  if (!middle) return [];
  const round = Array.from({ length: lookCount }, (_, i) => (2 * Math.PI * i) / lookCount).flatMap((turn) => {
    const aside = add(scale(first, Math.cos(turn)), scale(second, Math.sin(turn)));
    const found = surfaceAlong(stage, eye, normalize(add(toAim, scale(aside, roundMetres))));
    return found && distance(found.position, middle.position) < mostAwayMetres ? [found] : [];
  });
  return [middle, ...round];
};

/** Mean illuminance per lumen on surfaces while the lamp goes along one leg; each is metered at other moments. */
const lightOfLeg = (stage: Stage, source: Source, surfaces: readonly SurfacePoint[], leg: number, legs: number) => {
  const own = Math.ceil(legSamples / surfaces.length);
  const count = own * surfaces.length;
  let sum = 0;
  surfaces.forEach((surface, i) => {
    for (let s = i; s < count; s += surfaces.length)
      sum += irradianceSample(stage, source, surface, {
        u: sampleNumber(s, dimension.emitterU, 0, 0),
        v: sampleNumber(s, dimension.emitterV, 0, 0),
        time: (leg + (s + 0.5) / count) / legs,
      });
  });
  return sum / count;
};

const spreadOf = (matrix: readonly (readonly number[])[], weights: readonly number[]): number => {
  const doses = matrix.map((row) => row.reduce((sum, lux, k) => sum + lux * (weights[k] as number), 0));
  return stopsFromRatio(Math.max(...doses) / Math.min(...doses));
};

/**
 * The path with times under which the dose at its aims comes out even: it lingers where the light is weak, and at both ends,
 * past which no beam comes. Matt receivers with their own normal, cosine, beam and shadows, at the waypoints' aims and half-way
 * between them, on what the eye sees there; direct light. The times only: level and on-time stay.
 *
 * @param stroke that the times fill
 */
export const evenDose = (swept: Swept, stroke: Pick<Stroke, 'on' | 'off'>): EvenDose => {
  const { stage, emitter } = swept;
  const beam = beamAngleRadians(emitter) ?? Math.PI / 2;
  const waypoints = dividedPath(swept.waypoints, Math.min(Math.max(beam * legShare, leastSpan), mostSpan));
  const legs = waypoints.length - 1;
  const path = waypoints.map(({ position, aim }, i) => ({
    seconds: i,
    position: worldFromDocument(position),
    aim: worldFromDocument(aim),
  }));
  const source: Source = { kind: 'lamp', emitter, path, onOff: [0, legs], holder: null };
  const places = Array.from({ length: 2 * legs + 1 }, (_, i) => {
    const [a, b] = [path[Math.floor(i / 2)], path[Math.ceil(i / 2)]] as [(typeof path)[number], (typeof path)[number]];
    return { at: i / 2, position: mix(a.position, b.position, 0.5), aim: mix(a.aim, b.aim, 0.5) };
  });
  const peak = emitterPeakPerLumen(emitter);
  const halfBeam = Math.tan(beam / 2);
  const rows = places.map(({ at, position, aim }) => {
    const round = Math.min(roundShare * halfBeam * distance(position, aim), mostRoundMetres);
    const surfaces = surfacesAt(swept, aim, round);
    const lux = Array.from({ length: surfaces.length > 0 ? legs : 0 }, (_, k) =>
      lightOfLeg(stage, source, surfaces, k, legs),
    );
    const least = (leastShare * peak) / Math.max(distance(position, surfaces[0]?.place ?? aim), 0.1) ** 2;
    return { at, lux, isLit: lux.some((value) => value > least) };
  });
  const unlit = rows.filter(({ isLit }) => !isLit).map(({ at }) => at);
  const matrix = rows.filter(({ isLit }) => isLit).map(({ lux }) => lux);
  if (matrix.length === 0) return { kind: 'cannot', unlit };
  const quickest = legsOf(waypoints).map(({ turnRadians, positionMetres }) =>
    Math.max(turnRadians / mostRadiansPerSecond, positionMetres / mostMetresPerSecond),
  );
  const times = timesFromWeights(evenWeights(matrix), stroke, quickest);
  const shares = (of: readonly number[]) => of.slice(1).map((time, k) => time - (of[k] as number));
  return {
    kind: 'even',
    waypoints: waypoints.map((waypoint, i) => ({ ...waypoint, time: times[i] as number })),
    spreadBeforeStops: spreadOf(matrix, shares(evenSpeedTimes(waypoints, stroke))),
    spreadStops: spreadOf(matrix, shares(times)),
    unlit,
  };
};
