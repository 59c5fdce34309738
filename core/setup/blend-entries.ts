import type { Frame, Scheme } from './schema/setup.ts';

export type Blend = Scheme['blend'];

/** A frame in a blend as the document names it: how strongly it counts, and where. */
export type NamedEntry = Blend['frames'][number];

/** A frame in a blend. */
export type BlendEntry = Omit<NamedEntry, 'frameId'> & { readonly frame: Frame };

const everywhere = { weight: 1, where: 'everything', subjectId: null, featherPixels: 0 } as const;

/** A frame that counts everywhere and at full strength. */
export const fullEntry = (frameId: string): NamedEntry => ({ frameId, ...everywhere });
export const wholeFrame = (frame: Frame): BlendEntry => ({ frame, ...everywhere });

/** What a blend takes, written out: an empty list stands for every frame, everywhere, at full strength. */
export const namedEntries = ({ frames, blend }: Scheme): readonly NamedEntry[] =>
  blend.frames.length > 0 ? blend.frames : frames.map(({ id }) => fullEntry(id));

/** The same with the frames themselves. */
export const blendEntries = (scheme: Scheme): BlendEntry[] =>
  namedEntries(scheme).map(({ frameId, ...entry }) => ({
    ...entry,
    frame: scheme.frames.find(({ id }) => id === frameId) as Frame,
  }));
