import { describe, expect, it } from 'vitest';
import type { Triple } from '../../../core/colour/matrix.ts';
import { luminanceOfLinearSrgb } from '../../../core/colour/srgb.ts';
import type { Vec3 } from '../../../core/geometry/vec.ts';
import { glowShape } from '../../../core/sky/glow-dome.ts';
import { glowLuminance } from '../../../core/sky/glow-luminance.ts';
import { surfaceMagnitudeFromLuminance } from '../../../core/sky/magnitudes.ts';
import { moonLight } from '../../../core/sky/moon-light.ts';
import { skyLuminance } from '../../../core/sky/sky-luminance.ts';
import { starHalo } from '../../../core/sky/star-halo.ts';
import { radiansFromDegrees } from '../../../core/units/angle.ts';
import { directionAt, type FakeSky, fakeSky } from './fake-sky.ts';
import { horizontalLux } from './horizontal-lux.ts';
import { luxRound } from './lux-round.ts';

const full = { withoutStarsToV8: false };
const skyOf = (fake: FakeSky = {}) => skyLuminance(fakeSky(fake), [], full);
const y = (sky: (toward: Vec3) => Triple, toward: Vec3): number => luminanceOfLinearSrgb(sky(toward));
const town = {
  bearingRadians: radiansFromDegrees(80),
  halfWidthRadians: radiansFromDegrees(4),
  luminanceAt10DegreesCdM2: 5e-3,
  temperatureKelvin: 2700,
};

describe('skyLuminance', () => {
  it.each([16.5, 19, 20.5, 21.5, 21.8, 22])(
    'a site of %d reads that straight up, far from both bands (abs 0.03 mag)',
    (magnitude) => {
      const sky = skyOf({ input: { zenithMagnitude: magnitude } });
      expect(Math.abs(surfaceMagnitudeFromLuminance(y(sky, [0, 1, 0])) - magnitude)).toBeLessThan(0.03);
    },
  );

  it('reads the same with a named town, once its glow is added', () => {
    const state = fakeSky({ input: { zenithMagnitude: 20 } });
    const sky = skyLuminance(state, [town], full);
    const glow = town.luminanceAt10DegreesCdM2 * y(glowLuminance(town, 0), [0, 1, 0]);
    expect(Math.abs(surfaceMagnitudeFromLuminance(y(sky, [0, 1, 0]) + glow) - 20)).toBeLessThan(0.03);
  });

  it('a moonless site of 21.8 has level ground at about 1 mlx (0.6 to 1.3)', () => {
    const low = horizontalLux(skyOf());
    const high = horizontalLux(skyOf({ galacticCentre: [86, 0], galacticPole: [4, 180] }));
    for (const lux of [low, high]) {
      expect(lux).toBeGreaterThan(0.6e-3);
      expect(lux).toBeLessThan(1.3e-3);
    }
    expect(high).toBeGreaterThan(low);
  });

  it('the Milky Way overhead brightens the zenith by 0.3 to 0.9 mag', () => {
    const zenith = (sky: FakeSky) => surfaceMagnitudeFromLuminance(y(skyOf(sky), [0, 1, 0]));
    const gain = zenith({}) - zenith({ galacticCentre: [84.5, 0], galacticPole: [5.5, 180] });
    expect(gain).toBeGreaterThan(0.3);
    expect(gain).toBeLessThan(0.9);
  });

  it('adds moon and twilight to the night in cd/m2 (rel 1e-9)', () => {
    const toward = directionAt(35, 300);
    const night = y(skyOf(), toward);
    const moonlit = y(skyOf({ moon: [40, 100] }), toward);
    const dusk = y(skyOf({ sun: [-9, 250] }), toward);
    // the sun's place also moves the zodiacal light, so the night is taken with that sun
    const nightThen = y(skyOf({ sun: [-50, 250] }), toward);
    const both = y(skyOf({ moon: [40, 100], sun: [-9, 250] }), toward);
    expect(both - dusk).toBeCloseTo(moonlit - night, 12);
    expect(dusk).toBeGreaterThan(nightThen);
  });

  it('says below the horizon what it says on it', () => {
    const sky = skyOf({ moon: [30, 60], sun: [-8, 200] });
    const [below, level] = [sky(directionAt(-30, 77)), sky(directionAt(0, 77))];
    for (const c of [0, 1, 2] as const) expect(below[c]).toBeCloseTo(level[c], 9);
    for (const value of sky([0, -1, 0])) expect(Number.isFinite(value)).toBe(true);
  });

  it('is finite and positive in all channels all over, night, dusk, moon, town, cloud', () => {
    for (const fake of [
      {},
      { sun: [-4, 250] },
      { sun: [-13, 10] },
      { moon: [1, 10], sun: [-30, 20] },
      { moon: [70, 10], input: { thinCloudDepth: 0.7, extinctionMagnitudes: 0.8 } },
      { input: { zenithMagnitude: 16 } },
      { input: { zenithMagnitude: 22.2 } },
    ] as readonly FakeSky[]) {
      const sky = skyOf(fake);
      for (let altitude = 0; altitude <= 90; altitude += 6)
        for (let bearing = 0; bearing < 360; bearing += 15)
          for (const value of sky(directionAt(altitude, bearing))) {
            expect(Number.isFinite(value)).toBe(true);
            expect(value).toBeGreaterThan(0);
          }
    }
  });

  it('changes without a jump while sun and moon go through their limits (under 6 % in 0.1 degree; under 17 % for the sun)', () => {
    const toward = directionAt(40, 20);
    for (let altitude = -3; altitude < 14; altitude += 0.1) {
      const [a, b] = [altitude, altitude + 0.1].map((at) => y(skyOf({ moon: [at, 200] }), toward));
      expect(Math.abs((b as number) / (a as number) - 1)).toBeLessThan(0.06);
    }
    for (let altitude = -22; altitude < 0.5; altitude += 0.1) {
      const [a, b] = [altitude, altitude + 0.1].map((at) => y(skyOf({ sun: [at, 200] }), toward));
      // the steepest published fall is 1.5 mag a degree: 15 % in a tenth
      expect(Math.abs((b as number) / (a as number) - 1)).toBeLessThan(0.17);
    }
  });

  it('is blue straight up and warm over the sun in deep dusk, and dark opposite it', () => {
    const sky = skyOf({ sun: [-6, 270] });
    const zenith = sky([0, 1, 0]);
    const low = sky(directionAt(2, 270));
    expect(zenith[2] / zenith[1]).toBeGreaterThan(1.7);
    expect(low[0] / low[2]).toBeGreaterThan(2);
    expect(y(sky, directionAt(3, 90))).toBeLessThan(0.05 * y(sky, directionAt(3, 270)));
    const early = skyOf({ sun: [-3, 270] });
    expect(y(early, directionAt(2, 90))).toBeLessThan(y(early, directionAt(9, 90)));
  });

  it('thin cloud keeps moonlight together: a tenth of what it takes out is lost, and some of the moonlit air', () => {
    const ground = (thinCloudDepth: number): number => {
      const state = fakeSky({ moon: [60, 30], input: { thinCloudDepth } });
      const moon = moonLight(state);
      const direct = (moon?.lux ?? 0) * state.moon.towardSeen[1];
      return direct + luxRound(skyLuminance(state, [], full), state.moon.towardSeen);
    };
    const share = ground(0.3) / ground(0);
    expect(share).toBeGreaterThan(0.93);
    expect(share).toBeLessThan(0.99);
  });

  it('thin cloud takes contrast from the Milky Way', () => {
    const contrast = (thinCloudDepth: number): number => {
      const sky = skyOf({ galacticCentre: [86, 0], galacticPole: [4, 180], input: { thinCloudDepth } });
      return y(sky, directionAt(85, 0)) / y(sky, directionAt(50, 180));
    };
    expect(contrast(0.8)).toBeLessThan(contrast(0));
  });
});

describe('glowLuminance', () => {
  it('has luminance 1 ten degrees up at its bearing, wherever the scene’s north is (abs 1e-3)', () => {
    for (const north of [0, 40, 200]) {
      const glow = glowLuminance(town, radiansFromDegrees(north));
      expect(y(glow, directionAt(10, 80 - north))).toBeCloseTo(1, 3);
    }
  });

  it('is redder than its lamps low down, and no jump at the zenith', () => {
    const glow = glowLuminance(town, 0);
    const [low, high] = [glow(directionAt(3, 80)), glow(directionAt(50, 80))];
    expect(low[0] / low[1]).toBeGreaterThan(high[0] / high[1]);
    expect(y(glow, directionAt(89.9, 80)) / y(glow, directionAt(89.9, 260))).toBeCloseTo(1, 2);
  });

  it('is wider for a wider town, and no brighter in its middle', () => {
    expect(glowShape(10, 30, 30)).toBeGreaterThan(2 * glowShape(10, 30, 0));
    expect(glowShape(10, 0, 30)).toBe(glowShape(10, 0, 0));
  });
});

describe('starHalo', () => {
  it('is none without cloud, grows with it, and never takes over half', () => {
    expect(starHalo(0, 0.5).share).toBe(0);
    expect(starHalo(0.3, 0.5).share).toBeGreaterThan(starHalo(0.1, 0.5).share);
    expect(starHalo(2, 0.01).share).toBeLessThanOrEqual(0.5);
  });
});
