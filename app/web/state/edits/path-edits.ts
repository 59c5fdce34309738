import { evenSpeedTimes } from '../../../../core/passes/even-speed-times.ts';
import { type PathKind, pathKind } from '../../../../core/passes/path-legs.ts';
import { steadyPath } from '../../../../core/passes/steady-path.ts';
import { stretchedPath } from '../../../../core/passes/stretch-path.ts';
import { firstStroke } from '../../../../core/passes/stroke.ts';
import type { Pass, Position, Setup, Waypoint } from '../../../../core/setup/schema/setup.ts';
import { EditRefused } from './edit-refused.ts';
import { areApart, changeFrame, changePass, type PassPlace, withinWorld } from './within.ts';

/**
 * Edits of the way that the lamp of a pass goes: pure, each (setup, place, argument) -> setup. Waypoints are counted from 0.
 * At even speed their times are set anew with every edit; otherwise they stay.
 */

/** Most waypoints of a pass. */
const mostWaypoints = 256;
/** How far to each side of its aim a sweep begins and ends, as a share of the way there: about ten degrees. */
const sweepShare = 0.18;
/** How far a walk goes to begin with, metres. */
const walkMetres = 2;

/** To the millimetre, and no minus nought. */
const rounded = (place: Position): Position =>
  withinWorld(place).map((v) => Math.round(v * 1000) / 1000 + 0) as Position;
const moved = (p: Position, by: Position, times = 1): Position =>
  rounded([p[0] + by[0] * times, p[1] + by[1] * times, p[2] + by[2] * times]);
const middle = (a: Position, b: Position): Position =>
  rounded([(a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2]);

/** A level metre to the right of whoever looks along the lamp. */
const toTheRight = ({ position, aim }: Waypoint): Position => {
  const [east, north] = [aim[0] - position[0], aim[1] - position[1]];
  const level = Math.hypot(east, north);
  return level > 1e-6 ? [north / level, -east / level, 0] : [1, 0, 0];
};

/** The pass on another way; refused where the lamp would stand on its own aim. */
const along = (pass: Pass, waypoints: Waypoint[]): Pass => {
  const onAim = waypoints.findIndex(({ position, aim }) => !areApart(position, aim));
  if (onAim >= 0) throw new EditRefused(`At waypoint ${onAim + 1} the lamp would stand on its own aim.`);
  if (waypoints.length > mostWaypoints) throw new EditRefused(`A way has at most ${mostWaypoints} waypoints.`);
  if (pass.dwell !== 'even-speed' || waypoints.length < 2) {
    const isInOrder = waypoints.every(({ time }, i) => i === 0 || time > (waypoints[i - 1] as Waypoint).time);
    if (!isInOrder) throw new EditRefused('There is no time left between these waypoints.');
    return { ...pass, waypoints };
  }
  const times = evenSpeedTimes(waypoints, firstStroke(pass));
  return { ...pass, waypoints: waypoints.map((waypoint, i) => ({ ...waypoint, time: times[i] as number })) };
};

/** One waypoint changed; nothing where its lamp would come to stand on its aim, which a hand that drags may pass. */
const replaced = (pass: Pass, index: number, change: (waypoint: Waypoint) => Waypoint): Pass => {
  const now = pass.waypoints[index];
  const next = now && change(now);
  if (!next || !areApart(next.position, next.aim)) return pass;
  return along(pass, pass.waypoints.with(index, next));
};

/** A sweep of two waypoints to both sides of what a lamp points at. */
const sweptFrom = ({ position, aim, time }: Waypoint): Waypoint[] => {
  const right = toTheRight({ position, aim, time });
  const away = Math.hypot(...aim.map((v, i) => v - (position[i] as number)));
  return [-1, 1].map((side) => ({ time, position, aim: moved(aim, right, side * Math.max(away * sweepShare, 0.5)) }));
};

/** Positions spread along a level way to the right of the first. */
const walkedFrom = (waypoints: readonly Waypoint[]): Waypoint[] => {
  const right = toTheRight(waypoints[0] as Waypoint);
  return waypoints.map((waypoint, i) => ({
    ...waypoint,
    position: moved(waypoint.position, right, (walkMetres * i) / (waypoints.length - 1)),
  }));
};

/** At even speed, with waypoints put in where a leg is too long for it; as many as the document takes. */
const atEvenSpeed = (pass: Pass, waypoints: readonly Waypoint[]): Pass =>
  along({ ...pass, dwell: 'even-speed' }, [...steadyPath(waypoints)]);

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
    if (kind === 'walk') return along(fresh, walkedFrom(now === 'still' ? [first, first] : pass.waypoints));
    const swept = hasWay
      ? pass.waypoints.map((waypoint) => ({ ...waypoint, position: first.position }))
      : sweptFrom(first);
    return fresh.dwell === 'even-speed' ? atEvenSpeed(fresh, swept) : along(fresh, swept);
  });

/** Puts a waypoint in the middle of the leg after one; after the last, as far on again. */
export const addWaypoint = (setup: Setup, place: PassPlace, after: number): Setup =>
  changePass(setup, place, (pass) => {
    const { waypoints } = pass;
    const [a, b] = [waypoints[after], waypoints[after + 1]];
    if (!a || waypoints.length < 2) return pass;
    if (b) {
      const between = {
        time: (a.time + b.time) / 2,
        position: middle(a.position, b.position),
        aim: middle(a.aim, b.aim),
      };
      return along(pass, waypoints.toSpliced(after + 1, 0, between));
    }
    const before = waypoints[after - 1] as Waypoint;
    const on = (of: 'position' | 'aim') => moved(a[of], a[of].map((v, i) => v - (before[of][i] as number)) as Position);
    // the stroke stays as long: what there was takes less of it
    const start = (waypoints[0] as Waypoint).time;
    const legs = waypoints.length - 1;
    const sooner = waypoints.map((w) => ({ ...w, time: start + (w.time - start) * (legs / (legs + 1)) }));
    return along(pass, [...sooner, { time: a.time, position: on('position'), aim: on('aim') }]);
  });

/** Takes a waypoint out; the ends' times are taken over by what then begins and ends the way. Two always stay. */
export const removeWaypoint = (setup: Setup, place: PassPlace, index: number): Setup =>
  changePass(setup, place, (pass) => {
    const { waypoints } = pass;
    if (waypoints.length <= 2 || !waypoints[index]) return pass;
    const [first, last] = [waypoints[0] as Waypoint, waypoints.at(-1) as Waypoint];
    const left = waypoints.toSpliced(index, 1);
    const timed = left.map((waypoint, i) => {
      const time = i === 0 ? first.time : i === left.length - 1 ? last.time : waypoint.time;
      return time === waypoint.time ? waypoint : { ...waypoint, time };
    });
    return along(pass, timed);
  });

export const moveWaypoint = (setup: Setup, place: PassPlace, index: number, position: Position): Setup =>
  changePass(setup, place, (pass) =>
    replaced(pass, index, (waypoint) => ({ ...waypoint, position: rounded(position) })),
  );

export const aimWaypoint = (setup: Setup, place: PassPlace, index: number, aim: Position): Setup =>
  changePass(setup, place, (pass) => replaced(pass, index, (waypoint) => ({ ...waypoint, aim: rounded(aim) })));

/** Types the time of a waypoint, seconds after the shutter opens: within the first stroke, between its neighbours. */
export const timeWaypoint = (setup: Setup, place: PassPlace, index: number, seconds: number): Setup =>
  changePass(setup, place, (pass) => {
    const { on, off } = firstStroke(pass);
    const [before, after] = [pass.waypoints[index - 1], pass.waypoints[index + 1]];
    if (seconds < on || seconds > off)
      throw new EditRefused(`The stroke is from ${on} s to ${Number(off.toFixed(3))} s.`);
    if ((before && seconds <= before.time) || (after && seconds >= after.time))
      throw new EditRefused(`Waypoint ${index + 1} comes after the one before it and before the next.`);
    return replaced({ ...pass, dwell: 'typed' }, index, (waypoint) => ({ ...waypoint, time: seconds }));
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
    return pass.dwell === dwell ? pass : along({ ...pass, dwell }, pass.waypoints);
  });

/** Whether the hand keeps its speed on all legs, as far as more waypoints could make it. */
export const isSteady = ({ waypoints }: Pass): boolean => steadyPath(waypoints) === waypoints;

/** Takes the way and times that were worked out for an even dose. */
export const takeEvened = (setup: Setup, place: PassPlace, waypoints: readonly Waypoint[]): Setup =>
  changePass(setup, place, (pass) => along({ ...pass, dwell: 'even-dose' }, [...waypoints]));

/** Makes a sweep over places that were drawn in the picture, from where the lamp begins, at even speed. */
export const paintSweep = (setup: Setup, place: PassPlace, aims: readonly Position[]): Setup =>
  changePass(setup, place, (pass) => {
    const { position, time } = pass.waypoints[0] as Waypoint;
    const waypoints = aims.map((aim) => ({ time, position, aim: rounded(aim) }));
    if (waypoints.length < 2) throw new EditRefused('A sweep needs two places at least.');
    return atEvenSpeed(pass, waypoints);
  });
