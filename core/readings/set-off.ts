import type { Frame, Scheme } from '../setup/schema/setup.ts';
import { type FrameOrder, frameOrders } from './frame-order.ts';

const settingsOf = ({ aperture, seconds, iso, focusMetres, whiteBalance }: Frame): string =>
  JSON.stringify([aperture, seconds, iso, focusMetres, whiteBalance]);

/**
 * Whether a frame is exposed or focused otherwise than the one before it: somebody has to be at the camera then. The first
 * is set beforehand, and can be set off from afar.
 *
 * @param f its place in the scheme, from 0
 */
export const isSetByHand = ({ frames }: Pick<Scheme, 'frames'>, f: number): boolean => {
  const [before, frame] = [frames[f - 1], frames[f]];
  return before !== undefined && frame !== undefined && settingsOf(before) !== settingsOf(frame);
};

/** The last frame, up to this one, that somebody has to be at the camera for; the first frame where all are alike. */
export const lastSetFrame = (scheme: Pick<Scheme, 'frames'>, frame: Frame): Frame => {
  let f = scheme.frames.indexOf(frame);
  while (f > 0 && !isSetByHand(scheme, f)) f--;
  return scheme.frames[f] as Frame;
};

/** Whether somebody has to be at the camera after one frame and before, or for, another that comes later. */
export const wasAtCameraSince = (scheme: Pick<Scheme, 'frames'>, earlier: Frame, later: Frame): boolean =>
  scheme.frames.indexOf(lastSetFrame(scheme, later)) > scheme.frames.indexOf(earlier);

/**
 * When whoever sets a scheme’s frames off is free to leave the camera for a frame: as the delay of
 * `lastSetFrame` begins. Seconds from the first shutter.
 */
export const leavesCameraAt = (scheme: Pick<Scheme, 'frames'>, frame: Frame): number => {
  const set = lastSetFrame(scheme, frame);
  const { startSeconds } = frameOrders(scheme)[scheme.frames.indexOf(set)] as FrameOrder;
  return startSeconds - set.delaySeconds;
};
