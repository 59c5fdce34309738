import { type BlendEntry, blendEntries, wholeFrame } from '../../../core/setup/blend-entries.ts';
import type { Frame, Scheme } from '../../../core/setup/schema/setup.ts';
import { likeFrame } from './like-frame.ts';

/**
 * The frames of a scheme that its picture shows: the one like the frame shown, else those of its blend. The one place that
 * decides it, so that marks and numbers are those of the picture.
 *
 * @param shown a frame of any scheme; null shows the blend
 */
export const framesShown = (scheme: Scheme, shown: Frame | null): BlendEntry[] => {
  const like = shown && likeFrame(scheme, shown);
  return like ? [wholeFrame(like)] : blendEntries(scheme);
};

/** Their ids, each once: a blend may take a frame several times. */
export const frameIdsShown = (scheme: Scheme, shown: Frame | null): string[] => [
  ...new Set(framesShown(scheme, shown).map(({ frame }) => frame.id)),
];
