import { litFrom } from '../../../../core/passes/lit-from.ts';
import type { Frame, Setup } from '../../../../core/setup/schema/setup.ts';
import { stepThird } from '../../../../core/units/third-stops.ts';
import { blendWithCopies } from './blend-with-copies.ts';
import { cutTo, longestName } from './cut-to.ts';
import { EditRefused } from './edit-refused.ts';
import { withRoom } from './frame-list.ts';
import { changeScheme, freshId, type PassPlace } from './within.ts';

/** From the shutter to the first lamp, and from the last lamp to the shutter; seconds. */
const leadSeconds = 1;
/** Over the walk itself, to press the remote and find the place. */
const spareSeconds = 3;

/** As long as its passes take and a moment more, in a marked time, and never longer than it was. */
const shortened = (frame: Frame): Frame => {
  const end = Math.max(...frame.passes.map(({ off }) => off));
  return { ...frame, seconds: Math.min(stepThird('seconds', end + leadSeconds, 1), frame.seconds) };
};

/**
 * Moves a pass, and those after it, into a frame of their own behind the one that they are in, with time to walk there
 * before its shutter. All counts stay; both frames are as long as their passes take, and count in the blend alike.
 *
 * @param walkSeconds what the walk to the pass takes
 */
export const splitFrame = (setup: Setup, { schemeId, frameId, passId }: PassPlace, walkSeconds: number): Setup =>
  changeScheme(setup, schemeId, (scheme) => {
    const at = scheme.frames.findIndex(({ id }) => id === frameId);
    const frame = scheme.frames[at];
    const first = frame?.passes.find(({ id }) => id === passId);
    if (!frame || !first) return scheme;
    const later = frame.passes.filter(({ id, on }) => id === passId || on > first.on);
    const kept = frame.passes.filter((pass) => !later.includes(pass));
    if (kept.length === 0) throw new EditRefused('There is no pass before it in that frame; nothing was split.');
    withRoom(scheme);
    const shift = Math.max(Math.min(...later.map(({ on }) => on)) - leadSeconds, 0);
    const second: Frame = {
      ...frame,
      id: freshId(scheme.frames, frame.id),
      name: `${cutTo(frame.name, longestName - 4)} 2`,
      delaySeconds: Math.max(frame.delaySeconds, Math.ceil(walkSeconds) + spareSeconds),
      passes: later.map((pass) => litFrom(pass, pass.on - shift, pass.off - shift)),
    };
    const pair = [shortened({ ...frame, passes: kept }), shortened(second)];
    return {
      ...scheme,
      frames: scheme.frames.toSpliced(at, 1, ...pair),
      blend: blendWithCopies(scheme.blend, frameId, [second.id]),
    };
  });
