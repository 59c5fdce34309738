import { namedEntries } from '../setup/blend-entries.ts';
import type { FrameCase, SchemeCase } from './caution.ts';

/** A frame as it counts in the picture. */
export interface BlendPart extends FrameCase {
  readonly weight: number;
  /** Whether it gives the picture its sky, and its land. */
  readonly hasSky: boolean;
  readonly hasLand: boolean;
}

/** The frames of a scheme as they count in its picture; those without weight don't. */
export const blendParts = ({ scheme, frames }: SchemeCase): BlendPart[] =>
  namedEntries(scheme).flatMap(({ frameId, weight, where }) => {
    const found = frames.find(({ frame }) => frame.id === frameId);
    const part = { weight, hasSky: where === 'everything' || where === 'sky', hasLand: where !== 'sky' };
    return found && weight > 0 ? [{ ...found, ...part }] : [];
  });
