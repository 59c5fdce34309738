import { describe, expect, it } from 'vitest';
import { luminanceOfLinearSrgb } from '../../../core/colour/srgb.ts';
import { inputAfter, midExposure } from '../../../core/sky/mid-exposure.ts';
import { skyAt } from '../../../core/sky/sky-at.ts';
import type { SkyInput } from '../../../core/sky/sky-input.ts';
import { skyLuminance } from '../../../core/sky/sky-luminance.ts';
import { seenAlong, seenLuminance } from '../../../core/trace/sky-picture.ts';
import { directionAt } from '../sky/fake-sky.ts';
import { skyInput } from '../support/sky-inputs.ts';

/** On the equator at an equinox the sun sinks as fast as anywhere; six degrees down it is at half past six or so. */
const dusk = skyInput(0, 0, Date.UTC(2026, 2, 20, 18, 32));
const night = skyInput(0, 0, Date.UTC(2026, 2, 20, 22, 0));
const rise = (() => {
  let input = skyInput(-33, 149, Date.UTC(2026, 7, 30, 8, 0));
  while (skyAt(input).moon.altitudeRadians < 0.02) input = inputAfter(input, 30);
  return input;
})();

const looks = [directionAt(60, 90), directionAt(30, 275), directionAt(20, 10)];
const seen = (input: SkyInput, seconds: number) => ({ input, domes: [], seconds, haze: null });

/** Mean of the smooth sky over an exposure: a fine sum over time. */
const meanAlong = (input: SkyInput, seconds: number, toward: (typeof looks)[number]): number => {
  const instants = 48;
  let sum = 0;
  for (let i = 0; i < instants; i++) {
    const state = skyAt(inputAfter(input, (seconds * (i + 0.5)) / instants));
    sum += luminanceOfLinearSrgb(skyLuminance(state, [], { withoutStarsToV8: false })(toward));
  }
  return sum / instants;
};

describe('the smooth sky of a long exposure', () => {
  it.each([
    ['dusk', 120, 0.01, dusk],
    ['dusk', 300, 0.02, dusk],
    ['dusk', 600, 0.06, dusk],
    ['moonrise', 600, 0.02, rise],
    ['night', 300, 0.01, night],
  ] as const)('%s of %d s: the mean of a fine sum over time (rel %d)', (_, seconds, tolerance, input) => {
    for (const toward of looks) {
      const ours = luminanceOfLinearSrgb(seenAlong(seen(input, seconds), toward));
      expect(Math.abs(ours / meanAlong(input, seconds, toward) - 1), `${seconds} s`).toBeLessThan(tolerance);
    }
  });

  it('is that of the middle alone up to a minute, and in an unchanging night', () => {
    for (const [input, seconds] of [
      [dusk, 60],
      [night, 300],
    ] as const) {
      const middle = skyAt(midExposure(input, seconds));
      const plain = skyLuminance(middle, [], { withoutStarsToV8: false });
      const long = seenLuminance(middle, seen(input, seconds), false);
      for (const toward of looks) expect(long(toward)).toEqual(plain(toward));
    }
  });
});
