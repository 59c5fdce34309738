import { describe, expect, it } from 'vitest';
import { starReading } from '../../../core/readings/star-reading.ts';
import type { Frame } from '../../../core/setup/schema/setup.ts';
import { relativeError } from '../support/errors.ts';
import { onePassSetup } from '../support/scenes.ts';

const read = (camera: object, frame: object) => {
  const setup = onePassSetup({
    camera: { position: [0, 0, 1.5], aim: [0, 10, 1.5], ...camera },
    frame,
    pass: { waypoints: [{ position: [3, 0, 1], aim: [0, 8, 1] }] },
  });
  return starReading(setup.camera, setup.schemes[0]?.frames[0] as Frame);
};
/** Earth's turn in radians a second: 7.292115e-5 (IERS conventions). */
const turn = 7.292115e-5;

describe('starReading', () => {
  it.each([
    [24, 20, 2 ** (13 / 3)],
    [14, 30, 32],
    [135, 8, 8],
    [24, 240, 240],
  ])('%d mm, %d s: the trail is f w t / p, with the exact time (rel 1e-5)', (focalLengthMm, seconds, exact) => {
    const { trailPixels } = read({ focalLengthMm }, { seconds });
    expect(relativeError(trailPixels, (focalLengthMm * turn * exact) / 0.006)).toBeLessThanOrEqual(1e-5);
  });

  it('each rule’s trail is what its seconds give; twice the time is twice the trail (rel 1e-5)', () => {
    const { rules } = read({ focalLengthMm: 35 }, { aperture: 2.8 });
    expect(rules.length).toBe(4);
    for (const { seconds, trailPixels } of rules)
      expect(relativeError(trailPixels, (35 * turn * seconds) / 0.006)).toBeLessThanOrEqual(1e-5);
    expect(rules[0]?.trailPixels).toBeCloseTo(1, 9);
  });

  it('the 500 rule goes by the sensor’s diagonal (common practice); the pixel rules by aperture and pitch', () => {
    const full = read({}, { aperture: 2 }).rules;
    const small = read(
      { sensor: { widthMm: 18, heightMm: 12, pixelsWide: 3000, pixelsHigh: 2000 } },
      { aperture: 2 },
    ).rules;
    expect(relativeError(full[3]?.seconds as number, 500 / 24)).toBeLessThanOrEqual(1e-12);
    expect(relativeError(small[3]?.seconds as number, 500 / 48)).toBeLessThanOrEqual(1e-12);
    // same pitch, same lens: the pixel rules do not change
    expect(small.slice(0, 3)).toEqual(full.slice(0, 3));
    // (35 N + 30 p) / f, published formula
    expect(relativeError(full[2]?.seconds as number, (35 * 2 + 30 * 6) / 24)).toBeLessThanOrEqual(1e-12);
  });
});
