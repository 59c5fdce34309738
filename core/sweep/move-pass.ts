import { pointsSomewhere } from '../passes/stretch-path.ts';
import type { Pass, Position, Waypoint } from '../setup/schema/setup.ts';
import { SweepError } from './sweep-error.ts';

/** What the document takes: 5 km level, 500 m down, 2 km up. */
const isInDocument = ([east, north, up]: Position): boolean =>
  Math.abs(east) <= 5000 && Math.abs(north) <= 5000 && up >= -500 && up <= 2000;

/** To the micrometre, and no minus nought: what a file can hold and people can read. */
const rounded = (v: number): number => Math.round(v * 1e6) / 1e6 + 0;

/**
 * Moves the whole path of a pass so that its first waypoint stands at `position`; every aim stays.
 *
 * @param position the document's [east, north, up], metres; rounded to the micrometre
 * @throws SweepError where a waypoint would leave the document's range or come to stand on its own aim
 */
export const movedPass = (pass: Pass, position: Position): Pass => {
  const from = (pass.waypoints[0] as Waypoint).position;
  const waypoints = pass.waypoints.map((w): Waypoint => {
    const moved = w.position.map((v, i) => rounded(v + (position[i] as number) - (from[i] as number))) as Position;
    return { ...w, position: moved };
  });
  const away = waypoints.find((w) => !isInDocument(w.position));
  if (away)
    throw new SweepError(
      'place',
      `must be within 5000 m level and from -500 to 2000 m up; a lamp would be at [${away.position.join(', ')}]`,
    );
  const onAim = waypoints.find((w) => !pointsSomewhere(w));
  if (onAim)
    throw new SweepError(
      'place',
      `must differ from the aim; a lamp would stand on it, at [${onAim.position.join(', ')}]`,
    );
  return { ...pass, waypoints };
};
