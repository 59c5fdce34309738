import { namedEntries } from '../setup/blend-entries.ts';
import { isInPart, maskOf } from '../trace/mask.ts';
import type { FrameCase, SchemeCase } from './caution.ts';

/** A frame as it counts in the picture. */
export interface BlendPart extends FrameCase {
  readonly weight: number;
  /** Whether it counts where the eye meets a subject, by its index on the stage; -1 the ground. */
  readonly counts: (subject: number) => boolean;
  /** Whether it gives the picture its sky, and any of its land. */
  readonly hasSky: boolean;
  readonly hasLand: boolean;
  /** Index of the one subject that it counts on; null where it counts on more, or on none. */
  readonly onlySubject: number | null;
}

/** The frames of a scheme as they count in its picture; those without weight don't. */
export const blendParts = ({ scheme, frames, world }: SchemeCase): BlendPart[] =>
  namedEntries(scheme).flatMap(({ frameId, weight, ...entry }) => {
    if (weight <= 0) return [];
    const found = frames.find(({ frame }) => frame.id === frameId) as FrameCase;
    const mask = maskOf(entry, world.stage);
    const counts = (met: number): boolean => isInPart(mask, met);
    const hasLand = mask?.part !== 'sky' && mask?.part !== 'nowhere';
    const onlySubject = typeof mask?.part === 'number' ? mask.part : null;
    return [{ ...found, weight, counts, hasSky: counts(-2), hasLand, onlySubject }];
  });
