import { litFrom } from '../passes/lit-from.ts';
import type { Frame, Pass } from '../setup/schema/setup.ts';
import { stepThird } from '../units/third-stops.ts';

/** From the shutter to the first lamp, and from the last lamp to the shutter; seconds. */
const leadSeconds = 1;
/** Over a walk, to press the remote and find the place. */
const spareSeconds = 3;
/** Longest room that is left in a painted frame for a longer count, seconds. */
const mostRoomSeconds = 120;

/**
 * Passes that one person counts one after the other in one frame, with the walks between them; squeezed where these do not
 * fit.
 *
 * @param walks to each pass from the one before, seconds; that to the first is 0
 */
export const inTurn = (passes: readonly Pass[], walks: readonly number[], frameSeconds: number): Pass[] => {
  const counts = passes.reduce((sum, { on, off }) => sum + off - on, 0);
  const walked = walks.reduce((sum, seconds) => sum + seconds, 0);
  const free = Math.max(frameSeconds - counts, 0);
  const share = walked > 0 ? Math.min(1, free / walked) : 0;
  // what is left is shared by the start, the ways and the end
  const slack = Math.min(leadSeconds, Math.max(free - walked, 0) / (passes.length + 1));
  let now = 0;
  return passes.map((pass, i) => {
    now += slack + (walks[i] as number) * share;
    const on = Math.min(now, Math.max(frameSeconds - (pass.off - pass.on), 0));
    const off = Math.min(on + pass.off - pass.on, frameSeconds);
    now = off;
    return litFrom(pass, on, off);
  });
};

/**
 * A frame of its own for a pass: as long as the count takes and a moment more, in a marked time, after time to walk there.
 *
 * @param walkSeconds to it from the pass before; 0 for none
 * @param roomSeconds that the frame should hold where it can, so that a pass set under the night level may be counted longer
 */
export const ownFrame = (
  frame: Frame,
  pass: Pass,
  walkSeconds: number,
  roomSeconds: number,
): { readonly frame: Frame; readonly pass: Pass } => {
  const length = pass.off - pass.on;
  const room = leadSeconds + Math.max(length, Math.min(roomSeconds, mostRoomSeconds));
  const wait = walkSeconds > 0 ? Math.ceil(walkSeconds) + spareSeconds : 0;
  // past the last marking it stays as it is
  const seconds = Math.max(stepThird('seconds', room, 1), Math.ceil(room));
  return {
    frame: { ...frame, seconds, delaySeconds: Math.max(frame.delaySeconds, wait) },
    pass: litFrom(pass, leadSeconds, leadSeconds + length),
  };
};
