import type { Walk } from '../readings/timing-reading.ts';
import type { PassRule } from './caution.ts';
import { limits } from './limits.ts';

const whole = (number: number): string => String(Math.round(number));

/** What a walk takes at the speed that is set, and in the dark: "21 s at your 1.2 m/s, 31 to 50 s at 0.8 to 0.5 m/s in the dark". */
const timesText = ({ metres, seconds }: Walk): string => {
  const { slow, quick } = limits.darkWalking;
  const speed = Number((metres / seconds).toFixed(2));
  const own = `${whole(seconds)} s at your ${speed} m/s`;
  if (speed === slow) return own;
  if (speed === quick) return `${own}, ${whole(metres / slow)} s at ${slow} m/s over rough ground`;
  return `${own}, ${whole(metres / quick)} to ${whole(metres / slow)} s at ${quick} to ${slow} m/s in the dark`;
};

/** Too little time to walk here from the pass before; `lateFromCamera` tells of ways from the camera. */
export const cannotWalk: PassRule = ({ pass, frame, walk }) => {
  if (!walk?.from || walk.metres < limits.stepMetres || walk.seconds <= walk.availableSeconds) return null;
  const { metres, seconds, availableSeconds, from, isWithinFrame } = walk;
  const more = Math.ceil(seconds - availableSeconds);
  const need = `${whole(metres)} m to walk from “${from.name}”, ${timesText(walk)}`;
  const have =
    availableSeconds > 0 ? `You have ${Number(availableSeconds.toFixed(1))} s.` : 'Both passes are on at once.';
  const waysOut = isWithinFrame
    ? `Split them into two frames, keep the shutter open ${more} s longer, ask a helper, or put one lamp on a stand.`
    : `Wait ${more} s longer before “${frame.name}”, ask a helper, or put one lamp on a stand.`;
  return {
    code: 'cannot-walk',
    severity: isWithinFrame ? 'danger' : 'warning',
    passId: pass.id,
    message: `${pass.name}: ${need}. ${have} ${waysOut}`,
    value: seconds,
    limit: availableSeconds,
  };
};
