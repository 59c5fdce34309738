import type { Blend } from '../../../../core/setup/blend-entries.ts';
import { EditRefused } from './edit-refused.ts';
import { mostFrames } from './most-frames.ts';

/**
 * A blend in which copies of a frame count wherever the frame does, and as much. One that takes every frame has them
 * already. Refused where that makes more entries than the document takes: a copy that counts in part would be another
 * picture.
 */
export const blendWithCopies = (blend: Blend, frameId: string, copyIds: readonly string[]): Blend => {
  const frames = blend.frames.flatMap((entry) =>
    entry.frameId === frameId ? [entry, ...copyIds.map((id) => ({ ...entry, frameId: id }))] : [entry],
  );
  if (frames.length > mostFrames)
    throw new EditRefused(
      `The blend would have ${frames.length} entries, and it takes at most ${mostFrames}. Leave some out of it first.`,
    );
  return { ...blend, frames };
};
