import { describe, expect, it } from 'vitest';
import { combinedShots } from '../../../core/testshot/combined-shots.ts';
import { lampFromShot, restDoubtStops } from '../../../core/testshot/lamp-from-shot.ts';
import { measuredAgainstPredicted } from '../../../core/testshot/measured-against-predicted.ts';
import { type PixelPatch, spotLevel } from '../../../core/testshot/spot-level.ts';

/** A patch of one colour, every pixel moved by what is given. */
const patchOf = (codes: readonly [number, number, number], move: (i: number) => number = () => 0): PixelPatch => {
  const data = new Uint8ClampedArray(20 * 20 * 4).fill(255);
  for (let i = 0; i < 400; i++)
    data.set(
      codes.map((code) => code + move(i)),
      4 * i,
    );
  return { data, width: 20, height: 20 };
};
const grey = (ratio: number) => [ratio, ratio, ratio] as const;
const predicted = (all: number, rest = 0) => ({
  all: grey(all),
  rest: grey(rest),
  spreadStops: 0,
  falloffLeftOutStops: 0,
});

describe('spotLevel', () => {
  it.each([
    // IEC 61966-2-1: ((code / 255 + 0.055) / 1.055) ^ 2.4, code / 255 / 12.92 up to 10
    [118, 0.18116424],
    [188, 0.50288646],
    [10, 0.00303527],
    [255, 1],
  ])('code %i is %f of white (IEC 61966-2-1, rel 1e-6)', (code, linear) => {
    const level = spotLevel(patchOf([code, code, code]));
    for (const channel of ['red', 'green', 'blue', 'luminance'] as const)
      expect(Math.abs(level[channel].linear / linear - 1)).toBeLessThan(1e-6);
  });

  it('takes the mean of light, not of codes: half black and half white is half the light, code 188', () => {
    const level = spotLevel(patchOf([0, 0, 0], (i) => (i % 2 === 0 ? 255 : 0)));
    expect(level.green.linear).toBeCloseTo(0.5, 2);
    expect(level.full.green).toBeCloseTo(0.5, 2);
  });

  it('noise of the mean shrinks with the root of the pixels; a step across the spot does not', () => {
    const noise = spotLevel(patchOf([100, 100, 100], (i) => ((i * 7919) % 21) - 10)).green.doubtStops;
    const step = spotLevel(patchOf([100, 100, 100], (i) => (i % 20 < 10 ? -10 : 10))).green.doubtStops;
    expect(noise).toBeLessThan(0.05);
    expect(step).toBeGreaterThan(2 * noise);
  });
});

describe('measuredAgainstPredicted', () => {
  it('code 118 in all channels lies on a prediction of mid-grey (ISO 12232: sRGB 118, within 0.01 stop)', () => {
    const compared = measuredAgainstPredicted(spotLevel(patchOf([118, 118, 118])), predicted(1), 'neutral');
    if ('refused' in compared) throw new Error(compared.refused);
    expect(Math.abs(compared.differenceStops)).toBeLessThan(0.01);
  });

  it.each([
    ['burnt out', [255, 255, 255], 4, /burnt out/],
    ['black', [2, 2, 2], 1, /all but black/],
    ['where nothing is predicted', [118, 118, 118], 0, /No light is predicted/],
  ] as const)('a spot %s is refused in words', (_, codes, all, words) => {
    const compared = measuredAgainstPredicted(spotLevel(patchOf(codes)), predicted(all), 'unknown');
    expect('refused' in compared && compared.refused).toMatch(words);
  });

  it('a red that is full does not spoil the green; a red lamp is compared by its luminance', () => {
    const warm = measuredAgainstPredicted(spotLevel(patchOf([255, 118, 60])), predicted(1), 'unknown');
    expect(warm).toMatchObject({ channel: 'green' });
    const red = { ...predicted(1), all: [2, 0.1, 0.1] as const };
    expect(measuredAgainstPredicted(spotLevel(patchOf([160, 20, 20])), red, 'unknown')).toMatchObject({
      channel: 'luminance',
    });
  });
});

describe('what photo and prediction differ by in colour', () => {
  it('is not known of a lamp of one pure colour: two channels are dark, and nothing is added to the doubt', () => {
    const spot = spotLevel(patchOf([160, 0, 0]));
    const compared = measuredAgainstPredicted(spot, { ...predicted(1), all: [2, 0, 0] }, 'unknown');
    if ('refused' in compared) throw new Error(compared.refused);
    expect(compared.channel).toBe('luminance');
    const known = Math.hypot(compared.curveStops, spot.luminance.doubtStops);
    expect(compared.uncertaintyStops).toBeCloseTo(known, 12);
  });
});

describe('lampFromShot', () => {
  const from = (differenceStops: number, restShare: number, uncertaintyStops = 0.2) =>
    lampFromShot({ differenceStops, restShare, uncertaintyStops });

  it.each([-2, -0.5, 0, 0.7])('alone at the spot the lamp has all of the difference: %f stops', (stops) => {
    const found = from(stops, 0);
    if ('refused' in found) throw new Error(found.refused);
    expect(found.share).toBe(1);
    expect(found.stops).toBeCloseTo(stops, 12);
    expect(found.uncertaintyStops).toBeCloseTo(0.2, 12);
  });

  it.each([
    [0.25, 0.5],
    [0.4, 0.7],
    [0.5, 0.4],
  ])('with %f of the light from elsewhere, a lamp at %f of its output is found again (rel 1e-12)', (rest, output) => {
    const found = from(Math.log2(rest + (1 - rest) * output), rest, 0.05);
    if ('refused' in found) throw new Error(found.refused);
    expect(Math.abs(2 ** found.stops / output - 1)).toBeLessThan(1e-12);
    // the photo's own doubt, magnified by all of its light over the lamp's, and that of the rest by the rest's over it
    const lamp = (1 - rest) * output;
    const [ofPhoto, ofRest] = [(0.05 * (rest + lamp)) / lamp, (0.3 * rest) / lamp];
    expect(found.uncertaintyStops).toBeCloseTo(Math.hypot(ofPhoto, ofRest), 10);
  });

  it('a sky off by what is allowed for moves the lamp by no more than is said, to a tenth of it', () => {
    for (const rest of [0.1, 0.3, 0.5, 0.7]) {
      // a sky weaker than predicted by a twentieth of the doubt: the rest of the photo is the lamp's, as predicted
      const sky = rest * 2 ** (-restDoubtStops / 20);
      const found = from(Math.log2(sky + (1 - rest)), rest, 0);
      if ('refused' in found) throw new Error(found.refused);
      expect(found.stops).toBeLessThan(0);
      expect(Math.abs(found.uncertaintyStops / 20 / Math.abs(found.stops) - 1)).toBeLessThan(0.1);
    }
  });

  it.each([
    ['gives too little of it', 0, 0.8, /Only 20 % of the light/],
    ['would have to give less than nothing', -2, 0.5, /darker there than moon and sky alone/],
    ['is hardly told from the rest', -0.9, 0.5, /could only be told to ±/],
    ['would be absurdly off', 7, 0, /off by 7.0 stops/],
  ] as const)('refuses where the lamp %s', (_, difference, rest, words) => {
    const found = from(difference, rest, 0.3);
    expect('refused' in found && found.refused).toMatch(words);
  });
});

describe('combinedShots', () => {
  const shot = (stops: number, uncertaintyStops = 0.3) => ({ stops, uncertaintyStops });
  it('is the median: one shot gone wrong among three does not move it', () => {
    expect(combinedShots([shot(-0.8), shot(3), shot(-0.7)]).correctionStops).toBe(-0.7);
    expect(combinedShots([shot(-0.8), shot(-0.6)]).correctionStops).toBe(-0.7);
    expect(combinedShots([])).toEqual({ correctionStops: 0, spreadStops: 0, uncertaintyStops: 0 });
  });
  it('stays within what a lamp may be corrected by', () => {
    expect(combinedShots([shot(-9)]).correctionStops).toBe(-6);
    expect(combinedShots([shot(9)]).correctionStops).toBe(4);
  });
  it('is no surer than the shots, and less sure where they are far apart', () => {
    expect(combinedShots([shot(0, 0.4), shot(0.1, 0.3), shot(0, 0.2)]).uncertaintyStops).toBe(0.3);
    expect(combinedShots([shot(-2), shot(0), shot(2)]).uncertaintyStops).toBeCloseTo(2 / Math.sqrt(3), 10);
  });
});
