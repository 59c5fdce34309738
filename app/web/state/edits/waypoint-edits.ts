import { firstStroke } from '../../../../core/passes/stroke.ts';
import type { Pass, Position, Setup, Waypoint } from '../../../../core/setup/schema/setup.ts';
import { wentAlong } from './along-way.ts';
import { EditRefused } from './edit-refused.ts';
import { middlePlace, movedPlace, roundedPlace } from './rounded-places.ts';
import { areApart, changePass, type PassPlace } from './within.ts';

/** Edits of single waypoints of a pass: pure, each (setup, place, argument) -> setup. Waypoints are counted from 0. */

/** One waypoint changed; nothing where its lamp would come to stand on its aim, which a hand that drags may pass. */
const replaced = (pass: Pass, index: number, change: (waypoint: Waypoint) => Waypoint): Pass => {
  const now = pass.waypoints[index];
  const next = now && change(now);
  if (!next || !areApart(next.position, next.aim)) return pass;
  return wentAlong(pass, pass.waypoints.with(index, next));
};

/** Puts a waypoint in the middle of the leg after one; after the last, as far on again. */
export const addWaypoint = (setup: Setup, place: PassPlace, after: number): Setup =>
  changePass(setup, place, (pass) => {
    const { waypoints } = pass;
    const [a, b] = [waypoints[after], waypoints[after + 1]];
    if (!a || waypoints.length < 2) return pass;
    if (b) {
      const between = {
        time: (a.time + b.time) / 2,
        position: middlePlace(a.position, b.position),
        aim: middlePlace(a.aim, b.aim),
      };
      return wentAlong(pass, waypoints.toSpliced(after + 1, 0, between));
    }
    const before = waypoints[after - 1] as Waypoint;
    const on = (of: 'position' | 'aim') =>
      movedPlace(a[of], a[of].map((v, i) => v - (before[of][i] as number)) as Position);
    // the stroke stays as long: what there was takes less of it
    const start = (waypoints[0] as Waypoint).time;
    const legs = waypoints.length - 1;
    const sooner = waypoints.map((w) => ({ ...w, time: start + (w.time - start) * (legs / (legs + 1)) }));
    return wentAlong(pass, [...sooner, { time: a.time, position: on('position'), aim: on('aim') }]);
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
    return wentAlong(pass, timed);
  });

export const moveWaypoint = (setup: Setup, place: PassPlace, index: number, position: Position): Setup =>
  changePass(setup, place, (pass) =>
    replaced(pass, index, (waypoint) => ({ ...waypoint, position: roundedPlace(position) })),
  );

export const aimWaypoint = (setup: Setup, place: PassPlace, index: number, aim: Position): Setup =>
  changePass(setup, place, (pass) => replaced(pass, index, (waypoint) => ({ ...waypoint, aim: roundedPlace(aim) })));

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
