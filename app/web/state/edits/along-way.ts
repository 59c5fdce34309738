import { evenSpeedTimes } from '../../../../core/passes/even-speed-times.ts';
import { firstStroke } from '../../../../core/passes/stroke.ts';
import type { Pass, Waypoint } from '../../../../core/setup/schema/setup.ts';
import { EditRefused } from './edit-refused.ts';
import { areApart } from './within.ts';

/** Most waypoints of a pass. */
const mostWaypoints = 256;

/**
 * The pass on another way: at even speed its times are set anew, otherwise they stay.
 *
 * @throws EditRefused where the lamp would stand on its own aim, the way is too long, or its times are out of order
 */
export const wentAlong = (pass: Pass, waypoints: Waypoint[]): Pass => {
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
