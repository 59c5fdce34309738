import type { Lamp, Setup } from '../../../../core/setup/schema/setup.ts';
import { combinedShots } from '../../../../core/testshot/combined-shots.ts';
import type { PhotoSettings } from '../../../../core/testshot/photo-settings.ts';
import { setFrameNumber } from './frame-edits.ts';
import { setPassSeconds } from './pass-edits.ts';
import { type FramePlace, type PassPlace, replaceById } from './within.ts';

/** Edits by what a photo of a test frame says: pure, each (setup, …) -> setup. */

export type TestShot = Lamp['testShots'][number];

/** Most shots that a lamp keeps; the oldest make room. */
export const mostTestShots = 24;

/** A lamp with other test shots: what it really gives is their median. */
export const withTestShots = (lamp: Lamp, testShots: readonly TestShot[]): Lamp => ({
  ...lamp,
  testShots: testShots.slice(-mostTestShots),
  correctionStops: combinedShots(testShots.slice(-mostTestShots)).correctionStops,
});

const changeShots = (setup: Setup, lampId: string, change: (shots: readonly TestShot[]) => TestShot[]): Setup => ({
  ...setup,
  lamps: replaceById(setup.lamps, lampId, (lamp) => withTestShots(lamp, change(lamp.testShots))),
});

/** A lamp with one more shot, to a thousandth of a stop. */
export const withTestShot = (lamp: Lamp, { at, stops, uncertaintyStops }: TestShot): Lamp =>
  withTestShots(lamp, [
    ...lamp.testShots,
    { at, stops: Number(stops.toFixed(3)), uncertaintyStops: Number(Math.min(uncertaintyStops, 20).toFixed(3)) },
  ]);

/** Keeps a shot with the lamp and corrects its real output by all of them. */
export const addTestShot = (setup: Setup, lampId: string, shot: TestShot): Setup => ({
  ...setup,
  lamps: replaceById(setup.lamps, lampId, (lamp) => withTestShot(lamp, shot)),
});

/** Takes one shot back. */
export const removeTestShot = (setup: Setup, lampId: string, index: number): Setup =>
  changeShots(setup, lampId, (shots) => shots.toSpliced(index, 1));

/** The lamp as its box says again. */
export const forgetTestShots = (setup: Setup, lampId: string): Setup => changeShots(setup, lampId, () => []);

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

/** Gives a frame the exposure that a photo was taken with; what the photo does not say stays. The same setup where the frame has it. */
export const takePhotoSettings = (setup: Setup, place: FramePlace, photo: PhotoSettings): Setup => {
  const scheme = setup.schemes.find(({ id }) => id === place.schemeId);
  const frame = scheme?.frames.find(({ id }) => id === place.frameId);
  return (['seconds', 'aperture', 'iso'] as const).reduce((changed, field) => {
    const value = photo[field];
    return value === null || value === frame?.[field] ? changed : setFrameNumber(changed, place, field, value);
  }, setup);
};
