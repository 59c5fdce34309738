import { litFrom } from '../../../../core/passes/lit-from.ts';
import type { Pass, Setup, TestShot } from '../../../../core/setup/schema/setup.ts';
import type { PhotoSettings } from '../../../../core/testshot/photo-settings.ts';
import { setFrameNumber } from './frame-edits.ts';
import { addTestShot } from './lamp-shots.ts';
import { setPassSeconds } from './pass-edits.ts';
import { changeFrame, type FramePlace, type PassPlace } from './within.ts';

/** Edits by what a photo of a test frame says: pure, each (setup, …) -> setup. */

/** Corrects the lamp, and makes its passes of a frame longer or shorter by as much, so that the picture stays as planned. */
export const correctCounts = (
  setup: Setup,
  lampId: string,
  shot: TestShot,
  counts: readonly { readonly place: PassPlace; readonly seconds: number }[],
): Setup =>
  counts.reduce(
    (changed, { place, seconds }) => setPassSeconds(changed, place, seconds),
    addTestShot(setup, lampId, shot),
  );

/** Whether a lamp stands there, lit for as long as the shutter is open: it is so for another time too. */
const standsLit = ({ held, on, off }: Pass, frameSeconds: number): boolean =>
  held === 'stand' && on === 0 && off === frameSeconds;

/** The shutter as the photo had it. Lamps that stand lit all the while follow it; the others are squeezed into it. */
const takeSeconds = (setup: Setup, place: FramePlace, seconds: number): Setup =>
  changeFrame(setFrameNumber(setup, place, 'seconds', seconds), place, (frame) => {
    const before = setup.schemes.find(({ id }) => id === place.schemeId)?.frames.find(({ id }) => id === frame.id);
    const standing = new Set(before?.passes.flatMap((pass) => (standsLit(pass, before.seconds) ? [pass.id] : [])));
    const passes = frame.passes.map((pass) => (standing.has(pass.id) ? litFrom(pass, 0, seconds) : pass));
    return { ...frame, passes };
  });

/** Gives a frame the exposure that a photo was taken with; what the photo does not say stays. The same setup where the frame has it. */
export const takePhotoSettings = (setup: Setup, place: FramePlace, photo: PhotoSettings): Setup => {
  const scheme = setup.schemes.find(({ id }) => id === place.schemeId);
  const frame = scheme?.frames.find(({ id }) => id === place.frameId);
  return (['seconds', 'aperture', 'iso'] as const).reduce((changed, field) => {
    const value = photo[field];
    if (value === null || value === frame?.[field]) return changed;
    return field === 'seconds' ? takeSeconds(changed, place, value) : setFrameNumber(changed, place, field, value);
  }, setup);
};

/** A pass and how long its lamp was really on. */
export interface HeldCount {
  readonly passId: string;
  readonly seconds: number;
}

/** Gives passes of a frame the counts that were held, as far as the shutter holds them; the same setup where they have them. */
export const takeCounts = (setup: Setup, place: FramePlace, counts: readonly HeldCount[]): Setup => {
  const frame = setup.schemes.find(({ id }) => id === place.schemeId)?.frames.find(({ id }) => id === place.frameId);
  return counts.reduce((changed, { passId, seconds }) => {
    const pass = frame?.passes.find(({ id }) => id === passId);
    if (!frame || !pass || Math.abs(pass.off - pass.on - seconds) < 1e-6) return changed;
    return setPassSeconds(changed, { ...place, passId }, Math.min(seconds, frame.seconds));
  }, setup);
};
