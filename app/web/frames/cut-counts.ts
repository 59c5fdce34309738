import type { Frame, Setup } from '../../../core/setup/schema/setup.ts';
import { likeFrame } from '../state/like-frame.ts';
import { shutterText } from '../ui/words.ts';

/** The counts of a frame, and of its like in other schemes, that a shorter shutter cuts: "Key from 8 s", "Key of Front from 8 s". */
export const cutCounts = (setup: Setup, frame: Frame, schemeIds: readonly string[], seconds: number): string[] =>
  setup.schemes.flatMap((scheme) => {
    if (!schemeIds.includes(scheme.id)) return [];
    const of = schemeIds.length > 1 ? ` of ${scheme.name}` : '';
    const passes = likeFrame(scheme, frame)?.passes ?? [];
    return passes.flatMap(({ name, on, off }) =>
      off - on > seconds ? [`${name}${of} from ${shutterText(off - on)} s`] : [],
    );
  });
