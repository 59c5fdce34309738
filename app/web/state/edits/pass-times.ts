import type { Frame, Pass, Setup } from '../../../../core/setup/schema/setup.ts';
import { areApart, changeFrame, type PassPlace } from './within.ts';

type Waypoint = Pass['waypoints'][number];

/** Shortest time that a lamp is on, seconds. */
const shortestSeconds = 0.01;

const clamp = (value: number, low: number, high: number) => Math.min(Math.max(value, low), high);

/** Where a lamp is on its way at a time: straight and even between waypoints, at rest before the first and after the last. */
const waypointAt = (way: readonly Waypoint[], time: number): Waypoint => {
  const after = way.findIndex((waypoint) => waypoint.time > time);
  const [a, b] = [way[after - 1], way[after]];
  if (!a || !b) return { ...((after < 0 ? way.at(-1) : b) as Waypoint), time };
  const share = (time - a.time) / (b.time - a.time);
  const mix = (p: Waypoint['position'], q: Waypoint['position']) =>
    p.map((v, i) => v + ((q[i] as number) - v) * share) as Waypoint['position'];
  const mixed = { time, position: mix(a.position, b.position), aim: mix(a.aim, b.aim) };
  return areApart(mixed.position, mixed.aim) ? mixed : { ...(share < 0.5 ? a : b), time };
};

/** The way as far as the lamp is on: the rest is gone in the dark. */
const litWay = ({ waypoints, on, off }: Pass): Waypoint[] => {
  const lit = waypoints.filter(({ time }) => time >= on && time <= off);
  const startsBefore = (waypoints[0] as Waypoint).time < on && lit[0]?.time !== on;
  const endsAfter = (waypoints.at(-1) as Waypoint).time > off && lit.at(-1)?.time !== off;
  return [
    ...(startsBefore ? [waypointAt(waypoints, on)] : []),
    ...lit,
    ...(endsAfter ? [waypointAt(waypoints, off)] : []),
  ];
};

/** A pass that is lit from one time to another; its way is moved and stretched with it. */
export const litFrom = (pass: Pass, on: number, off: number): Pass => {
  if (on === pass.on && off === pass.off) return pass;
  if (pass.waypoints.length === 1) return { ...pass, on, off };
  const stretch = (off - on) / (pass.off - pass.on);
  const time = (before: number) => clamp(on + (before - pass.on) * stretch, on, off);
  return { ...pass, on, off, waypoints: litWay(pass).map((waypoint) => ({ ...waypoint, time: time(waypoint.time) })) };
};

/** What of a pass is moved along its frame's clock: an end, or all of it. */
export type PassEdge = 'on' | 'off' | 'whole';

const movedTo = (pass: Pass, frame: Frame, edge: PassEdge, seconds: number): Pass => {
  const length = pass.off - pass.on;
  if (edge === 'on') return litFrom(pass, clamp(seconds, 0, Math.max(pass.off - shortestSeconds, 0)), pass.off);
  if (edge === 'off') return litFrom(pass, pass.on, clamp(seconds, pass.on + shortestSeconds, frame.seconds));
  const on = clamp(seconds, 0, frame.seconds - length);
  // on + length may round to a hair past the frame's end
  return on === pass.on ? pass : litFrom(pass, on, Math.min(on + length, frame.seconds));
};

/**
 * Switches a lamp on or off at another time, or moves the whole pass so that it begins then. It is held within the frame,
 * and one end stops short of the other.
 *
 * @param seconds after the shutter opens
 */
export const movePassEdge = (setup: Setup, place: PassPlace, edge: PassEdge, seconds: number): Setup =>
  changeFrame(setup, place, (frame) => {
    const pass = frame.passes.find(({ id }) => id === place.passId);
    const moved = pass && movedTo(pass, frame, edge, seconds);
    if (!moved || moved === pass) return frame;
    return { ...frame, passes: frame.passes.map((each) => (each === pass ? moved : each)) };
  });
