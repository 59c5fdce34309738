import { halfTurnRadians } from '../units/angle.ts';
import { sightOf } from './hour-angle.ts';

/** The part of the sky in which something is wanted. */
export interface SkyWindow {
  /** True bearing of its middle. */
  readonly bearingRadians: number;
  /** Half its width; pi or more takes every bearing. */
  readonly toleranceRadians: number;
  /** True heights, without refraction. */
  readonly lowestRadians: number;
  readonly highestRadians: number;
}

/** A stretch of the earth's turn: hour angle at its start, -pi to pi, and its length, up to 2 pi. */
export interface HourSpan {
  readonly startRadians: number;
  readonly lengthRadians: number;
}

const wholeTurn = 2 * Math.PI;

/** Where a sin h + b cos h = c, -pi to pi: none, or two that may be one. */
const solveTurn = (a: number, b: number, c: number): readonly number[] => {
  const reach = Math.hypot(a, b);
  if (!(Math.abs(c) <= reach) || reach === 0) return [];
  const [middle, aside] = [Math.atan2(a, b), Math.acos(c / reach)];
  return [halfTurnRadians(middle - aside), halfTurnRadians(middle + aside)];
};

const isSeen = (hourAngle: number, declination: number, latitude: number, window: SkyWindow): boolean => {
  const { altitudeRadians, bearingRadians } = sightOf(hourAngle, declination, latitude);
  const aside = Math.abs(halfTurnRadians(bearingRadians - window.bearingRadians));
  const { lowestRadians, highestRadians, toleranceRadians } = window;
  return altitudeRadians >= lowestRadians && altitudeRadians <= highestRadians && aside <= toleranceRadians;
};

/**
 * When something of a fixed declination stands in a window of the sky, in closed form: it can come in or go out only
 * where it has one of the window's two heights or bearings, and between two such places it stays where it is.
 *
 * @returns stretches of hour angle, in order of their starts
 */
export const hourSpans = (
  latitudeRadians: number,
  declinationRadians: number,
  window: SkyWindow,
): readonly HourSpan[] => {
  const [sinD, cosD] = [Math.sin(declinationRadians), Math.cos(declinationRadians)];
  const [sinL, cosL] = [Math.sin(latitudeRadians), Math.cos(latitudeRadians)];
  const atHeight = (height: number) => solveTurn(0, cosL * cosD, Math.sin(height) - sinL * sinD);
  const atBearing = (bearing: number) =>
    solveTurn(-cosD * Math.cos(bearing), cosD * sinL * Math.sin(bearing), sinD * cosL * Math.sin(bearing));
  const { bearingRadians, toleranceRadians } = window;
  const edges = [
    ...atHeight(window.lowestRadians),
    ...atHeight(window.highestRadians),
    ...(toleranceRadians < Math.PI ? atBearing(bearingRadians - toleranceRadians) : []),
    ...(toleranceRadians < Math.PI ? atBearing(bearingRadians + toleranceRadians) : []),
  ].sort((a, b) => a - b);
  const inside = (hourAngle: number) => isSeen(hourAngle, declinationRadians, latitudeRadians, window);
  const [first] = edges;
  if (first === undefined) return inside(0) ? [{ startRadians: -Math.PI, lengthRadians: wholeTurn }] : [];
  const pieces = edges.map((start, i) => {
    const end = edges[i + 1] ?? first + wholeTurn;
    return { start, end, isInside: end > start && inside((start + end) / 2) };
  });
  const length = pieces.length;
  return pieces.flatMap(({ start, isInside }, i) => {
    // An edge that belongs to the window's other side changes nothing: the stretch goes on over it.
    if (!isInside || pieces[(i + length - 1) % length]?.isInside) return [];
    let run = 1;
    while (pieces[(i + run) % length]?.isInside) run++;
    const last = pieces[(i + run - 1) % length] as (typeof pieces)[number];
    const end = last.end + (i + run > length ? wholeTurn : 0);
    return [{ startRadians: start, lengthRadians: end - start }];
  });
};
