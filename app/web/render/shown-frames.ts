import type { BlendEntry } from '../../../core/setup/blend-entries.ts';
import type { Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { maskOf } from '../../../core/trace/mask.ts';
import type { World } from '../../../core/world/world.ts';
import type { ShownFrame } from './scene.ts';

/** Frames of a blend as pictures are made of them. */
export const shownFrames = (
  { camera }: Setup,
  scheme: Scheme,
  { stage, frames }: World,
  entries: readonly BlendEntry[],
): ShownFrame[] => {
  const { pixelsWide } = (scheme.camera ?? camera).sensor;
  return entries.flatMap((entry) => {
    const frame = frames.find(({ id }) => id === entry.frame.id);
    const mask = maskOf(entry, stage);
    return frame ? [{ frame, weight: entry.weight, mask, featherShare: entry.featherPixels / pixelsWide }] : [];
  });
};
