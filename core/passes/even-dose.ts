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
      /** From the least to the greatest dose along the aims, at even speed and now. */
      readonly spreadBeforeStops: number;
      readonly spreadStops: number;
    }
  | {
      readonly kind: 'cannot';
      /** Places along the path, counted in its waypoints from 0, at whose aim no leg gives light; halves lie between two. */
      readonly unlit: readonly number[];
    };

/** Legs that a path is divided into when it has fewer. */
const legCount = 16;
/** Moments of a leg that are metered. */
const legSamples = 16;
/** What is seen round an aim is metered with it, as one joint in a wall is not the wall: a quarter of the beam, at most 0.1 m. */
const [roundShare, mostRoundMetres] = [0.25, 0.1];
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
  const round = [first, second].flatMap((side) =>
    [-roundMetres, roundMetres].flatMap((by) => {
      const found = surfaceAlong(stage, eye, normalize(add(toAim, scale(side, by))));
      return found && distance(found.position, middle.position) < mostAwayMetres ? [found] : [];
    }),
  );
  return [middle, ...round];
};

/** Mean illuminance per lumen on surfaces while the lamp goes along one leg. */
const lightOfLeg = (stage: Stage, source: Source, surfaces: readonly SurfacePoint[], leg: number, legs: number) => {
  let sum = 0;
  for (const surface of surfaces)
    for (let s = 0; s < legSamples; s++)
      sum += irradianceSample(stage, source, surface, {
        u: sampleNumber(s, dimension.emitterU, 0, 0),
        v: sampleNumber(s, dimension.emitterV, 0, 0),
        time: (leg + (s + 0.5) / legSamples) / legs,
      });
  return sum / (surfaces.length * legSamples);
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
  const waypoints = dividedPath(swept.waypoints, legCount);
  const legs = waypoints.length - 1;
  const path = waypoints.map(({ position, aim }, i) => ({
    seconds: i,
    position: worldFromDocument(position),
    aim: worldFromDocument(aim),
  }));
  const source: Source = { kind: 'lamp', emitter, path, onOff: [0, legs] };
  const places = Array.from({ length: 2 * legs + 1 }, (_, i) => {
    const [a, b] = [path[Math.floor(i / 2)], path[Math.ceil(i / 2)]] as [(typeof path)[number], (typeof path)[number]];
    return { at: i / 2, position: mix(a.position, b.position, 0.5), aim: mix(a.aim, b.aim, 0.5) };
  });
  const peak = emitterPeakPerLumen(emitter);
  const halfBeam = Math.tan((beamAngleRadians(emitter) ?? Math.PI / 2) / 2);
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
  if (unlit.length > 0)
    return { kind: 'cannot', unlit: unlit.map((at) => originalPlace(swept.waypoints, waypoints, at)) };
  const matrix = rows.map(({ lux }) => lux);
  const times = timesFromWeights(evenWeights(matrix), stroke);
  const shares = (of: readonly number[]) => of.slice(1).map((time, k) => time - (of[k] as number));
  return {
    kind: 'even',
    waypoints: waypoints.map((waypoint, i) => ({ ...waypoint, time: times[i] as number })),
    spreadBeforeStops: spreadOf(matrix, shares(evenSpeedTimes(waypoints, stroke))),
    spreadStops: spreadOf(matrix, shares(times)),
  };
};

/** A place on a divided path, counted in the waypoints that it had before: whole ones stay whole, what lies between is a half. */
const originalPlace = (before: readonly Waypoint[], after: readonly Waypoint[], at: number): number => {
  const kept = after.flatMap((waypoint, i) => (before.includes(waypoint) ? [i] : []));
  const past = kept.filter((i) => i <= at).length - 1;
  return kept.includes(at) ? past : past + 0.5;
};
