import type { Frame, Scheme } from './schema/setup.ts';

/** A frame in a blend: how strongly it counts, and where. */
export type BlendEntry = Omit<Scheme['blend']['frames'][number], 'frameId'> & { readonly frame: Frame };

/** A frame everywhere at full strength. */
export const wholeFrame = (frame: Frame): BlendEntry => ({
  frame,
  weight: 1,
  where: 'everything',
  subjectId: null,
  featherPixels: 0,
});

/** The frames of a scheme's blend, in order: what the blend lists, or every frame everywhere where it lists none. */
export const blendEntries = ({ frames, blend }: Scheme): BlendEntry[] => {
  if (blend.frames.length === 0) return frames.map(wholeFrame);
  return blend.frames.flatMap(({ frameId, ...entry }) => {
    const frame = frames.find(({ id }) => id === frameId);
    return frame ? [{ ...entry, frame }] : [];
  });
};
