import type { Frame, Scheme } from '../setup/schema/setup.ts';

/** Whether a frame gives the picture its stars: it is meant to, or it is all there is. */
export const isStarFrame = (scheme: Scheme, frame: Frame): boolean =>
  frame.purpose === 'sky' || scheme.frames.length === 1;
