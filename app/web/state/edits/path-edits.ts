import { type PathKind, pathKind } from '../../../../core/passes/path-legs.ts';
import { steadyPath } from '../../../../core/passes/steady-path.ts';
import { stretchedPath } from '../../../../core/passes/stretch-path.ts';
import { firstStroke } from '../../../../core/passes/stroke.ts';
import type { Pass, Position, Setup, Waypoint } from '../../../../core/setup/schema/setup.ts';
import { wentAlong } from './along-way.ts';
import { EditRefused } from './edit-refused.ts';
import { movedPlace, roundedPlace } from './rounded-places.ts';
import { areApart, changeFrame, changePass, type PassPlace } from './within.ts';

/**
 * Edits of the way that the lamp of a pass goes: pure, each (setup, place, argument) -> setup. At even speed the times
 * of its waypoints are set anew with every edit; otherwise they stay.
 */

/** How far to each side of its aim a sweep begins and ends, as a share of the way there: about ten degrees. */
const sweepShare = 0.18;
/** How far a walk goes to begin with, metres. */
const walkMetres = 2;

/** A level metre to the right of whoever looks along the lamp. */
const toTheRight = ({ position, aim }: Waypoint): Position => {
  const [east, north] = [aim[0] - position[0], aim[1] - position[1]];
  const level = Math.hypot(east, north);
  return level > 1e-6 ? [north / level, -east / level, 0] : [1, 0, 0];
};

/** A sweep of two waypoints to both sides of what a lamp points at. */
const sweptFrom = ({ position, aim, time }: Waypoint): Waypoint[] => {
  const right = toTheRight({ position, aim, time });
  const away = Math.hypot(...aim.map((v, i) => v - (position[i] as number)));
  return [-1, 1].map((side) => ({
    time,
    position,
    aim: movedPlace(aim, right, side * Math.max(away * sweepShare, 0.5)),
  }));
};

/** Positions spread along a level way to the right of the first. */
const walkedFrom = (waypoints: readonly Waypoint[]): Waypoint[] => {
  const right = toTheRight(waypoints[0] as Waypoint);
  return waypoints.map((waypoint, i) => ({
    ...waypoint,
    position: movedPlace(waypoint.position, right, (walkMetres * i) / (waypoints.length - 1)),
  }));
};

/** At even speed, with waypoints put in where a leg is too long for it; as many as the document takes. */
const atEvenSpeed = (pass: Pass, waypoints: readonly Waypoint[]): Pass =>
  wentAlong({ ...pass, dwell: 'even-speed' }, [...steadyPath(waypoints)]);

/**
 * What moves in a pass. A sweep begins to both sides of the aim, a walk 2 m to the side, both at even speed; back to still,
 * the lamp stays where it began.
 */
export const setPathKind = (setup: Setup, place: PassPlace, kind: PathKind): Setup =>
  changePass(setup, place, (pass) => {
    const [first] = pass.waypoints as [Waypoint, ...Waypoint[]];
    const now = pathKind(pass.waypoints);
    if (kind === now) return pass;
    if (kind === 'still') return { ...pass, waypoints: [{ ...first, time: 0 }], strokes: 1, dwell: 'typed' };
    const hasWay = now === 'sweep' || pass.waypoints.some(({ aim }) => areApart(aim, first.aim));
    // where there is no way yet that could be kept, there are no times either
    const fresh: Pass = now === 'still' || !hasWay ? { ...pass, dwell: 'even-speed' } : pass;
    if (kind === 'walk') return wentAlong(fresh, walkedFrom(now === 'still' ? [first, first] : pass.waypoints));
    const swept = hasWay
      ? pass.waypoints.map((waypoint) => ({ ...waypoint, position: first.position }))
      : sweptFrom(first);
    return fresh.dwell === 'even-speed' ? atEvenSpeed(fresh, swept) : wentAlong(fresh, swept);
  });

/** So many strokes until the shutter closes: each the quicker. */
const untilShut = (pass: Pass, strokes: number, off: number): Pass => {
  const next = { ...pass, strokes, off };
  const [before, now] = [firstStroke(pass), firstStroke(next)];
  const waypoints = stretchedPath(pass.waypoints, [before.on, before.off], [now.on, now.off]);
  return waypoints ? { ...next, waypoints } : pass;
};

/** Goes the way so many times, each as long as before; where that runs past the shutter, quicker. */
export const setStrokes = (setup: Setup, place: PassPlace, strokes: number): Setup =>
  changeFrame(setup, place, (frame) => ({
    ...frame,
    passes: frame.passes.map((pass) => {
      if (pass.id !== place.passId || pass.strokes === strokes) return pass;
      const { seconds } = firstStroke(pass);
      const off = pass.on + strokes * seconds;
      if (off > frame.seconds + 1e-9) return untilShut(pass, strokes, frame.seconds);
      return { ...pass, strokes, off: Math.min(off, frame.seconds) };
    }),
  }));

/**
 * Leaves the times to be typed, or sets them at even speed, and puts waypoints into long legs, as one leg has one speed of the
 * spot and not of the hand. Later edits of single waypoints put none in, so that each keeps its number under the hand that
 * drags it; asked for again, it does. For an even dose see `takeEvened`.
 */
export const setDwell = (setup: Setup, place: PassPlace, dwell: 'typed' | 'even-speed'): Setup =>
  changePass(setup, place, (pass) => {
    if (dwell === 'even-speed' && !isSteady(pass)) return atEvenSpeed(pass, pass.waypoints);
    return pass.dwell === dwell ? pass : wentAlong({ ...pass, dwell }, pass.waypoints);
  });

/** Whether the hand keeps its speed on all legs, as far as more waypoints could make it. */
export const isSteady = ({ waypoints }: Pass): boolean => steadyPath(waypoints) === waypoints;

/** Takes the way and times that were worked out for an even dose. */
export const takeEvened = (setup: Setup, place: PassPlace, waypoints: readonly Waypoint[]): Setup =>
  changePass(setup, place, (pass) => wentAlong({ ...pass, dwell: 'even-dose' }, [...waypoints]));

/** Makes a sweep over places that were drawn in the picture, from where the lamp begins, at even speed. */
export const paintSweep = (setup: Setup, place: PassPlace, aims: readonly Position[]): Setup =>
  changePass(setup, place, (pass) => {
    const { position, time } = pass.waypoints[0] as Waypoint;
    const waypoints = aims.map((aim) => ({ time, position, aim: roundedPlace(aim) }));
    if (waypoints.length < 2) throw new EditRefused('A sweep needs two places at least.');
    return atEvenSpeed(pass, waypoints);
  });
