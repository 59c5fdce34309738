import { describe, expect, it } from 'vitest';
import { dot, normalize, type Vec3 } from '../../../core/geometry/vec.ts';
import { harmonicLux } from '../../../core/sky/dome-harmonics.ts';
import { type DomeLight, domeLight, domeLuminance } from '../../../core/sky/dome-light.ts';
import { glowLuminance } from '../../../core/sky/glow-luminance.ts';

const dome = (at: (toward: Vec3) => number): DomeLight =>
  domeLight((toward) => {
    const l = at(toward);
    return [l, l, l];
  }, null) as DomeLight;

/** Illuminance by the directions of equal light, as the renderers take it. */
const byDirections = ({ directions, luxAllRound }: DomeLight, normal: Vec3): number => {
  let sum = 0;
  for (let i = 0; i < directions.length; i += 3)
    sum += Math.max(
      dot(normal, [directions[i] as number, directions[i + 1] as number, directions[i + 2] as number]),
      0,
    );
  return (sum * luxAllRound * 3) / directions.length;
};

/** Illuminance by a plain sum over the dome. */
const bySum = (at: (toward: Vec3) => number, normal: Vec3, steps = 400): number => {
  let sum = 0;
  for (let i = 0; i < steps; i++)
    for (let j = 0; j < steps; j++) {
      const [y, a] = [(i + 0.5) / steps, (2 * Math.PI * (j + 0.5)) / steps];
      const level = Math.sqrt(1 - y * y);
      const toward: Vec3 = [level * Math.sin(a), y, -level * Math.cos(a)];
      sum += at(toward) * Math.max(dot(normal, toward), 0);
    }
  return (sum * 2 * Math.PI) / steps ** 2;
};

const normals: Vec3[] = [[0, 1, 0], [1, 0, 0], [0, 0, -1], normalize([0.4, 0.6, -0.7]), normalize([0.2, -0.5, 0.9])];

describe('domeLight of an even sky', () => {
  const even = dome(() => 0.5);

  it('gives pi L to level ground (rel 1e-6) and reads 2 lux all round for each', () => {
    expect(even.illuminance[1] / (Math.PI * 0.5)).toBeCloseTo(1, 6);
    expect(even.luxAllRound).toBeCloseTo(2, 5);
    expect(domeLuminance(even, normalize([0.3, 0.5, 0.1]))).toBeCloseTo(1 / Math.PI, 6);
    expect(domeLuminance(even, [0.6, -0.8, 0])).toBe(0);
  });

  it('gives a tilted plane (1 + cos tilt) / 2 of that: view factor of a half space (directions 0.2 %)', () => {
    for (const normal of normals) expect(byDirections(even, normal)).toBeCloseTo((1 + normal[1]) / 2, 2.7);
  });

  it('its nine numbers give the same within 3 % of level ground (Ramamoorthi and Hanrahan 2001)', () => {
    for (const normal of normals)
      expect(Math.abs(harmonicLux(even.harmonics, normal) - (1 + normal[1]) / 2)).toBeLessThan(0.07);
    expect(Math.abs(harmonicLux(even.harmonics, [0, 1, 0]) - 1)).toBeLessThan(0.03);
  });
});

describe('domeLight of uneven skies, against a plain sum over the dome', () => {
  const overcast = ([, y]: Vec3) => (1 + 2 * y) / 3;
  const glow = glowLuminance(
    { bearingRadians: 0.7, halfWidthRadians: 0.1, luminanceAt10DegreesCdM2: 1, temperatureKelvin: 2700 },
    0,
  );
  const town = (toward: Vec3) => glow(toward)[1];

  // CIE standard overcast sky: L = Lz (1 + 2 sin h) / 3 gives 7/9 pi Lz (Moon and Spencer 1942)
  it('an overcast sky by Moon and Spencer gives 7/9 pi Lz (0.1 %)', () => {
    expect(dome(overcast).illuminance[1] / ((7 / 9) * Math.PI)).toBeCloseTo(1, 3);
  });

  it.each([
    ['overcast', overcast],
    ['glow of a town', town],
  ] as const)('%s: the directions give what a sum gives, per lux on level ground (2 %)', (_, at) => {
    const light = dome(at);
    const level = bySum(at, [0, 1, 0]);
    for (const normal of normals) {
      const expected = bySum(at, normal) / level;
      expect(Math.abs(byDirections(light, normal) - expected)).toBeLessThan(0.02 * Math.max(expected, 1));
    }
  });

  it('a town in the northeast lights from the northeast, low', () => {
    const { middle } = dome(town);
    expect(Math.atan2(middle[0], -middle[2])).toBeCloseTo(0.7, 1);
    expect(middle[1]).toBeLessThan(0.6);
  });

  it('a dark sky is no light', () => {
    expect(domeLight(() => [0, 0, 0], null)).toBeNull();
  });
});
