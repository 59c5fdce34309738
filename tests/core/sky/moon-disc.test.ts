import { describe, expect, it } from 'vitest';
import { correlatedColourTemperature } from '../../../core/colour/cct.ts';
import { chromaticityFromXyz } from '../../../core/colour/chromaticity.ts';
import { apply } from '../../../core/colour/matrix.ts';
import { luminanceOfLinearSrgb, xyzFromLinearSrgb } from '../../../core/colour/srgb.ts';
import { add, basisAround, normalize, scale, type Vec3 } from '../../../core/geometry/vec.ts';
import { type MoonLight, moonLight } from '../../../core/sky/moon-light.ts';
import type { SkyState } from '../../../core/sky/sky-state.ts';
import { fakeSky } from './fake-sky.ts';
import { seenDisc } from './seen-disc.ts';

const at = (sky: SkyState, x: number, y: number): Vec3 => {
  const { towardSeen, radiusRadians } = sky.moon;
  const { first, second } = basisAround(towardSeen);
  return normalize(add(towardSeen, add(scale(first, x * radiusRadians), scale(second, y * radiusRadians))));
};

/** Light of the disc on a surface square to it, lux: midpoints of a fine grid. */
const discLux = (sky: SkyState): number => {
  const disc = seenDisc(sky);
  const cells = 200;
  const area = ((2.2 * sky.moon.radiusRadians) / cells) ** 2;
  let sum = 0;
  for (let i = 0; i < cells; i++)
    for (let j = 0; j < cells; j++) {
      const place = at(sky, 2.2 * ((i + 0.5) / cells - 0.5), 2.2 * ((j + 0.5) / cells - 0.5));
      sum += area * luminanceOfLinearSrgb(disc?.(place) ?? [0, 0, 0]);
    }
  return sum;
};

describe('moonFace through the air', () => {
  it.each([0, 30, 60, 90, 120])('phase %d: the disc gives together what moonlight says (rel 1 %)', (phaseDegrees) => {
    const sky = fakeSky({ moon: [50, 140], phaseDegrees });
    expect(Math.abs(discLux(sky) / (moonLight(sky)?.lux ?? 0) - 1)).toBeLessThan(0.01);
  });

  it('has the mean luminance of a full moon above the air, 4900 cd/m2 (rel 5 %), high up in thin air', () => {
    const sky = fakeSky({ moon: [90, 0], input: { extinctionMagnitudes: 0 } });
    const area = Math.PI * sky.moon.radiusRadians ** 2;
    expect(Math.abs(discLux(sky) / area / 4900 - 1)).toBeLessThan(0.05);
  });

  it('is bright on the side of the sun and dark on the other', () => {
    const sky = fakeSky({ moon: [40, 140], phaseDegrees: 90 });
    const disc = seenDisc(sky);
    const { towardSeen, towardSun, radiusRadians } = sky.moon;
    const toward = (share: number) =>
      luminanceOfLinearSrgb(disc?.(normalize(add(towardSeen, scale(towardSun, share * radiusRadians)))) ?? [0, 0, 0]);
    expect(toward(0.7)).toBeGreaterThan(500);
    expect(toward(-0.7)).toBeLessThan(0.5);
    expect(toward(-0.7)).toBeGreaterThan(0.05);
  });

  it('is nothing beside the disc, and null under the horizon', () => {
    const sky = fakeSky({ moon: [40, 140] });
    expect(seenDisc(sky)?.(at(sky, 1.02, 0))).toEqual([0, 0, 0]);
    expect(luminanceOfLinearSrgb(seenDisc(sky)?.(at(sky, 0.98, 0)) ?? [0, 0, 0])).toBeGreaterThan(1000);
    expect(seenDisc(fakeSky({ moon: [-1, 140] }))).toBeNull();
  });
});

describe('moonLight', () => {
  it('fades while the disc sets and is null after it', () => {
    const lux = (altitude: number) => moonLight(fakeSky({ moon: [altitude, 140] }))?.lux ?? 0;
    const steps = [0.3, 0.2, 0.1, 0, -0.1, -0.2].map(lux);
    for (let i = 1; i < steps.length; i++) expect(steps[i]).toBeLessThan(steps[i - 1] as number);
    expect(moonLight(fakeSky({ moon: [-0.3, 140] }))).toBeNull();
  });

  it('is of about 4100 K while the moon stands at 20 to 50 degrees (abs 350 K)', () => {
    for (const altitude of [20, 35, 50]) {
      const { colour } = moonLight(
        fakeSky({ moon: [altitude, 140], input: { extinctionMagnitudes: 0.2 } }),
      ) as MoonLight;
      const cct = correlatedColourTemperature(chromaticityFromXyz(apply(xyzFromLinearSrgb, colour)));
      expect(Math.abs((cct?.temperatureKelvin ?? 0) - 4100)).toBeLessThan(350);
    }
  });

  it('is redder the lower the moon, and of luminance 1', () => {
    const ratios = [60, 30, 10, 3].map((altitude) => {
      const colour = moonLight(fakeSky({ moon: [altitude, 140] }))?.colour ?? [0, 0, 0];
      expect(luminanceOfLinearSrgb(colour)).toBeCloseTo(1, 12);
      return colour[0] / colour[2];
    });
    for (let i = 1; i < ratios.length; i++) expect(ratios[i]).toBeGreaterThan(ratios[i - 1] as number);
  });
});
