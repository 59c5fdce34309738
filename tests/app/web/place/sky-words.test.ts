import { describe, expect, it } from 'vitest';
import { compassWords } from '../../../../app/web/place/compass-words.ts';
import { parseVisibility } from '../../../../app/web/place/parse-visibility.ts';
import { glowOfMagnitude, glowWord, magnitudeOfGlow } from '../../../../app/web/place/town-glow.ts';
import { moonShape } from '../../../../app/web/ui/moon-shape.ts';
import { bearingText, darknessWord, heightText, litText } from '../../../../app/web/ui/sky-words.ts';

describe('brightness of a glow', () => {
  it('there and back gives the same number (rel 1e-3); none is told as the faintest', () => {
    for (const magnitude of [14, 18.5, 22, 25])
      expect(magnitudeOfGlow(glowOfMagnitude(magnitude))).toBeCloseTo(magnitude, 3);
    expect(magnitudeOfGlow(0)).toBe(27);
    // 22 mag/arcsec2 = 1.71e-4 cd/m2, as the usual 10.8e4 x 10^(-0.4 mu) has it
    expect(glowOfMagnitude(22)).toBeCloseTo(1.713e-4, 6);
    expect([17, 20, 21, 23, 25].map(glowWord)).toEqual([
      'very bright',
      'bright',
      'easily seen',
      'just seen',
      'not seen',
    ]);
  });
});

describe('words of the sky', () => {
  it('bearings go round: 359.6 is 0, and each wind takes 45 degrees', () => {
    expect([0, 22, 23, 134, 337, 338, 359.6, -90].map(bearingText)).toEqual([
      '0° N',
      '22° N',
      '23° NE',
      '134° SE',
      '337° NW',
      '338° N',
      '0° N',
      '270° W',
    ]);
  });

  it('heights, shares and darkness', () => {
    expect([0.42, 0.004, -0.2].map(heightText)).toEqual(['24° up', 'on the horizon', '11° below the horizon']);
    expect([0, 0.001, 0.123, 1].map(litText)).toEqual(['0 % lit', 'under 1 % lit', '12 % lit', '100 % lit']);
    expect(darknessWord(22)).not.toBe(darknessWord(17));
  });

  it('a compass: east and west, the date to which the model holds, and where it is no guide', () => {
    const of = (declinationDegrees: number) =>
      compassWords({
        kind: 'declination',
        declinationDegrees,
        modelName: 'WMM-2025',
        validUntilMilliseconds: Date.UTC(2029, 10, 12),
        isWeak: false,
      });
    expect(of(11.68)).toMatch(/^A compass points 11\.7° east of true north \(WMM-2025, valid to Nov 2029\)\./);
    expect(of(-0.52)).toMatch(/0\.5° west/);
    expect(of(0.01)).toMatch(/points to true north/);
    expect(compassWords({ kind: 'none', reason: 'near-pole' })).toMatch(/no guide/);
  });

  it('visibility: kilometres, metres, clear', () => {
    expect(['12', '12 km', '800 m', 'clear', ''].map((text) => parseVisibility(text))).toEqual([
      { value: 12 },
      { value: 12 },
      { value: 0.8 },
      { value: null },
      { value: null },
    ]);
    for (const text of ['0', '500', 'far']) expect(parseVisibility(text)).toHaveProperty('problem');
  });
});

/** Area of a path of arcs round the origin, by its points: only for the shapes of `moonShape`. */
const areaOf = (path: string, radius: number): number => {
  const match = /^M([-\d.]+) ([-\d.]+)A.*? ([-\d.]+) ([-\d.]+)A([\d.]+) [\d.]+ [-\d.]+ 0 ([01]) /.exec(path);
  if (!match) return 0;
  const [across, sweep] = [Number(match[5]), match[6]];
  const half = (Math.PI * radius * radius) / 2;
  const ellipse = (Math.PI * radius * across) / 2;
  return sweep === '1' ? half + ellipse : half - ellipse;
};

describe('moonShape', () => {
  it('covers the lit share of the disc (1 %), and nothing at new moon', () => {
    for (const share of [0.05, 0.3, 0.5, 0.8, 1])
      expect(areaOf(moonShape(10, share, 0.4), 10) / (Math.PI * 100)).toBeCloseTo(share, 2);
    expect(moonShape(10, 0, 0)).toBe('');
  });
});
