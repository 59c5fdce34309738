import type { Scheme } from '../../../../core/setup/schema/setup.ts';

export type Blend = Scheme['blend'];
export type BlendEntry = Blend['frames'][number];

/** A frame that counts in a blend everywhere and at full strength. */
export const fullEntry = (frameId: string): BlendEntry => ({
  frameId,
  weight: 1,
  where: 'everything',
  subjectId: null,
  featherPixels: 0,
});

/** What a blend takes, written out: an empty list stands for every frame, everywhere, at full strength. */
export const blendEntries = ({ frames, blend }: Scheme): readonly BlendEntry[] =>
  blend.frames.length > 0 ? blend.frames : frames.map(({ id }) => fullEntry(id));
