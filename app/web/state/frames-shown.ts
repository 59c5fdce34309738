import type { Frame, Scheme } from '../../../core/setup/schema/setup.ts';
import { likeFrame } from './like-frame.ts';

/** A frame in a picture, and its weight there. */
interface ShownFrame {
  readonly frame: Frame;
  readonly weight: number;
}

/**
 * The frames of a scheme that its picture shows: the one like the frame shown, else those of its blend. The one place that
 * decides it, so that marks and numbers are those of the picture.
 *
 * @param shown a frame of any scheme; null shows the blend
 */
export const framesShown = (scheme: Scheme, shown: Frame | null): ShownFrame[] => {
  const like = shown && likeFrame(scheme, shown);
  if (like) return [{ frame: like, weight: 1 }];
  const { frames, blend } = scheme;
  if (blend.frames.length === 0) return frames.map((frame) => ({ frame, weight: 1 }));
  return blend.frames.flatMap(({ frameId, weight }) => {
    const frame = frames.find(({ id }) => id === frameId);
    return frame ? [{ frame, weight }] : [];
  });
};

/** Their ids, each once: a blend may take a frame several times. */
export const frameIdsShown = (scheme: Scheme, shown: Frame | null): string[] => [
  ...new Set(framesShown(scheme, shown).map(({ frame }) => frame.id)),
];
