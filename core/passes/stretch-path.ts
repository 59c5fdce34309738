import type { Position, Waypoint } from '../setup/schema/setup.ts';
import { placeOnPath } from '../world/world.ts';

/** Whether lamp and aim differ by more than the micrometre that the document asks for. */
export const pointsSomewhere = ({ position, aim }: Pick<Waypoint, 'position' | 'aim'>): boolean =>
  position.some((v, i) => Math.abs(v - (aim[i] as number)) > 1e-6);

/** On and off, seconds after the shutter opens. */
export type OnOff = readonly [on: number, off: number];

/**
 * The same walk in another time: what the lamp passes between on and off before, it passes between on and off now, so
 * that its light is the same but for the time. Ends of the path outside the on-time, which gave no light, are cut off.
 *
 * @returns null where the path runs through its own aim at one of the cuts
 */
export const stretchedPath = (
  waypoints: readonly Waypoint[],
  [on, off]: OnOff,
  [newOn, newOff]: OnOff,
): Waypoint[] | null => {
  const path = waypoints.map(({ time, position, aim }) => ({ seconds: time, position, aim }));
  const cut = (time: number): Waypoint => {
    const { position, aim } = placeOnPath(path, time);
    return { time, position: [...position] as Position, aim: [...aim] as Position };
  };
  const [first, last] = [waypoints[0] as Waypoint, waypoints.at(-1) as Waypoint];
  // a lamp that rests at an end of its path needs no cut there
  const kept = [
    ...(first.time <= on ? [cut(on)] : []),
    ...waypoints.filter(({ time }) => time > on && time < off),
    ...(last.time >= off ? [cut(off)] : []),
  ];
  const moved = kept.map((w) => ({ ...w, time: newOn + ((w.time - on) / (off - on)) * (newOff - newOn) }));
  return moved.every(pointsSomewhere) ? moved : null;
};
