import type { Lamp, Setup, TestShot } from '../../../../core/setup/schema/setup.ts';
import { combinedShots } from '../../../../core/testshot/combined-shots.ts';
import { replaceById } from './within.ts';

/** Edits of the test shots that a lamp keeps: pure, each (setup, …) -> setup. */

/** Most shots that a lamp keeps; the oldest make room. */
export const mostTestShots = 24;

/** A lamp with other test shots: what it really gives is their median. */
const withTestShots = (lamp: Lamp, testShots: readonly TestShot[]): Lamp => ({
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
    {
      at,
      stops: Number(Math.min(Math.max(stops, -20), 20).toFixed(3)),
      uncertaintyStops: Number(Math.min(uncertaintyStops, 20).toFixed(3)),
    },
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
