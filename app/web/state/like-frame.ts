import type { Frame, Scheme } from '../../../core/setup/schema/setup.ts';

/** The frame of another scheme that stands for the same thing: of the same id, else its last one for the same purpose. */
export const likeFrame = (scheme: Scheme, { id, purpose }: Pick<Frame, 'id' | 'purpose'>): Frame | undefined =>
  scheme.frames.find((frame) => frame.id === id) ?? scheme.frames.findLast((frame) => frame.purpose === purpose);
