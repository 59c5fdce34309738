import { distance, mix, type Vec3 } from '../geometry/vec.ts';
import { beamAngleRadians } from '../photometry/beam-angle.ts';
import { type Emitter, emitterPeakPerLumen } from '../photometry/emitter.ts';
import type { Waypoint } from '../setup/schema/setup.ts';
import { stopsFromRatio } from '../units/stops.ts';
import { worldFromDocument } from '../world/axes.ts';
import type { Stage } from '../world/stage.ts';
import type { Source } from '../world/world.ts';
import { dividedPath, spanOf } from './divided-path.ts';
import { evenSpeedTimes } from './even-speed-times.ts';
import { evenWeights } from './even-weights.ts';
import { legGroups } from './leg-groups.ts';
import { lightBetween, surfacesSeen } from './light-seen.ts';
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
/** As fast as a hand still paints, 45 degrees a second, and brisk feet; common practice, no published source. */
const [mostRadiansPerSecond, mostMetresPerSecond] = [Math.PI / 4, 1.2];
/** Most groups of legs that are weighed against each other: the work grows with their square. A divided path has at most 22. */
const mostGroups = 24;
/** What is seen round an aim is metered with it, as one joint in a wall is not the wall: a third of the beam, at most 0.3 m. */
const [roundShare, mostRoundMetres] = [0.33, 0.3];
/** Less than this share of what the lamp gives square on at that distance is no light but the tail of its beam. */
const leastShare = 1e-4;

const spreadOf = (matrix: readonly (readonly number[])[], weights: readonly number[]): number => {
  const doses = matrix.map((row) => row.reduce((sum, lux, k) => sum + lux * (weights[k] as number), 0));
  return stopsFromRatio(Math.max(...doses) / Math.min(...doses));
};

/** Times of the waypoints of a group but its first, gone at even speed. */
const timesWithin = (
  evenly: readonly number[],
  [from, to]: readonly [number, number],
  [start, end]: readonly number[],
): number[] => {
  const [first, last] = [evenly[from] as number, evenly[to] as number];
  const [on, off] = [start as number, end as number];
  const inner = evenly.slice(from + 1, to).map((time) => on + ((time - first) / (last - first)) * (off - on));
  return [...inner, off];
};

/**
 * The path with times under which the dose at its aims comes out even: it lingers where the light is weak, and at both ends,
 * past which no beam comes. Matt receivers with their own normal, cosine, beam and shadows, at the waypoints' aims and half-way
 * between them, on what the eye sees there; direct light. The times only: level and on-time stay. Of a path with more than 24
 * legs, neighbouring short ones are gone at even speed, as one, and metered where such groups meet and at their middles.
 *
 * @param stroke that the times fill
 */
export const evenDose = (swept: Swept, stroke: Pick<Stroke, 'on' | 'off'>): EvenDose => {
  const { stage, eye, emitter } = swept;
  const beam = beamAngleRadians(emitter) ?? Math.PI / 2;
  const waypoints = dividedPath(swept.waypoints, Math.min(Math.max(beam * legShare, leastSpan), mostSpan));
  const evenly = evenSpeedTimes(waypoints, { on: 0, off: 1 });
  const path = waypoints.map(({ position, aim }, i) => ({
    seconds: evenly[i] as number,
    position: worldFromDocument(position),
    aim: worldFromDocument(aim),
  }));
  const source: Source = { kind: 'lamp', emitter, path, onOff: [0, 1], holder: null };
  const spans = waypoints.slice(1).map((to, i) => spanOf(waypoints[i] as Waypoint, to));
  const ends = legGroups(spans, mostGroups);
  const groups = ends.slice(1).map((to, g) => [ends[g] as number, to] as const);
  const places = [0, ...groups.flatMap(([from, to]) => [(from + to) / 2, to])].map((at) => {
    const [a, b] = [path[Math.floor(at)], path[Math.ceil(at)]] as [(typeof path)[number], (typeof path)[number]];
    return { at, position: mix(a.position, b.position, 0.5), aim: mix(a.aim, b.aim, 0.5) };
  });
  const peak = emitterPeakPerLumen(emitter);
  const halfBeam = Math.tan(beam / 2);
  const rows = places.map(({ at, position, aim }) => {
    const round = Math.min(roundShare * halfBeam * distance(position, aim), mostRoundMetres);
    const surfaces = surfacesSeen(stage, eye, aim, round);
    const lux = (surfaces.length > 0 ? groups : []).map(([from, to]) =>
      lightBetween(stage, source, surfaces, evenly[from] as number, evenly[to] as number),
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
  const quickestOf = groups.map(([from, to]) => quickest.slice(from, to).reduce((sum, seconds) => sum + seconds, 0));
  const endTimes = timesFromWeights(evenWeights(matrix), stroke, quickestOf);
  const times = [stroke.on, ...groups.flatMap((group, g) => timesWithin(evenly, group, endTimes.slice(g, g + 2)))];
  const shares = (of: readonly number[]) => of.slice(1).map((time, k) => time - (of[k] as number));
  return {
    kind: 'even',
    waypoints: waypoints.map((waypoint, i) => ({ ...waypoint, time: times[i] as number })),
    spreadBeforeStops: spreadOf(matrix, shares(ends.map((end) => evenly[end] as number))),
    spreadStops: spreadOf(matrix, shares(endTimes)),
    unlit,
  };
};
