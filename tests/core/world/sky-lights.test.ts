import { describe, expect, it } from 'vitest';
import { luminanceOfLinearSrgb } from '../../../core/colour/srgb.ts';
import type { GlowDome } from '../../../core/sky/glow-dome.ts';
import { moonLight } from '../../../core/sky/moon-light.ts';
import { skyAt } from '../../../core/sky/sky-at.ts';
import type { SkyInput } from '../../../core/sky/sky-input.ts';
import { skyLuminance } from '../../../core/sky/sky-luminance.ts';
import { skyLights } from '../../../core/world/sky-lights.ts';
import { luxRound } from '../sky/lux-round.ts';
import { skyInput } from '../support/sky-inputs.ts';

const minute = 60_000;
/** A moon some days from full over a place in the south, in the evening. */
const evening = Date.UTC(2026, 7, 24, 9, 0);
const inputAt = (minutes: number, thinCloudDepth: number): SkyInput => ({
  ...skyInput(-33, 149, evening + minutes * minute),
  thinCloudDepth,
});
const lightsAt = (input: SkyInput, seconds: number) => skyLights({ input, domes: [] }, null, seconds);
const strengthOf = (lights: ReturnType<typeof lightsAt>, id: string): number =>
  luminanceOfLinearSrgb(lights.find((light) => light.id === id)?.strength ?? [0, 0, 0]);

/** All light of moon and sky on level ground, lux: as the lights have it, and as a fine sum over the seen sky has it. */
const onGround = (input: SkyInput) => {
  const state = skyAt(input);
  const sine = state.moon.towardSeen[1];
  const lights = lightsAt(input, 0);
  const seen = luxRound(skyLuminance(state, [], { withoutStarsToV8: false }), state.moon.towardSeen, 240, 160);
  const straight = (moonLight(state)?.lux ?? 0) * sine;
  return { moon: strengthOf(lights, 'moon') * sine, sky: strengthOf(lights, 'sky'), seen, straight };
};

describe('moonlight on the land', () => {
  it.each([0, 0.1, 0.5])(
    'cloud of depth %d: what is not straight adds up to the light of the seen sky (2 %)',
    (depth) => {
      for (const minutes of [0, 3, 7, 12, 18, 150, 161]) {
        const { moon, sky, seen, straight } = onGround(inputAt(minutes, depth));
        expect(straight).toBeGreaterThan(0.005);
        expect(Math.abs((moon - straight + sky) / seen - 1), `${minutes} min`).toBeLessThan(0.02);
      }
    },
  );

  it('does not flicker through cloud of depth 0.3: sky and moon change by under 1.5 % a minute each', () => {
    const each = Array.from({ length: 12 }, (_, i) => lightsAt(inputAt(i, 0.3), 0));
    for (const id of ['moon', 'sky'])
      for (let i = 1; i < each.length; i++) {
        const [before, now] = [each[i - 1], each[i]].map((lights) => strengthOf(lights as (typeof each)[0], id));
        expect(Math.abs((now as number) / (before as number) - 1)).toBeLessThan(0.015);
      }
  });

  it('the narrow glow is bent by cloud and not taken out: a twentieth of light is lost at most (depth 0.1)', () => {
    const { moon, sky } = onGround(inputAt(0, 0.1));
    const clear = onGround(inputAt(0, 0));
    expect((moon + sky) / (clear.moon + clear.sky)).toBeGreaterThan(0.95);
  });
});

describe('the glow of towns', () => {
  const town = (luminanceAt10DegreesCdM2: number): GlowDome => ({
    bearingRadians: 1,
    halfWidthRadians: 0.1,
    luminanceAt10DegreesCdM2,
    temperatureKelvin: 2700,
  });
  const glows = (...towns: readonly number[]) =>
    skyLights({ input: inputAt(0, 0), domes: towns.map(town) }, null, 10).filter(({ id }) => id.startsWith('glow'));

  it('is a light for each town that has one, in proportion to it; a dark town gives none', () => {
    expect(glows(0)).toEqual([]);
    const [second, third] = glows(0, 0.001, 0.003);
    expect([second?.id, third?.id]).toEqual(['glow 2', 'glow 3']);
    expect(third?.source).toEqual(second?.source);
    expect(luminanceOfLinearSrgb(third?.strength ?? [0, 0, 0])).toBeCloseTo(
      3 * luminanceOfLinearSrgb(second?.strength ?? [0, 0, 0]),
      12,
    );
  });
});

describe('the middle of an exposure', () => {
  const of = (seconds: number) => lightsAt(inputAt(0, 0), seconds);
  const sourceOf = (lights: ReturnType<typeof lightsAt>, id: string) => lights.find((light) => light.id === id)?.source;

  it('lights the land: ten minutes as at the fifth', () => {
    for (const id of ['moon', 'sky']) expect(sourceOf(of(600), id)).toEqual(sourceOf(lightsAt(inputAt(5, 0), 0), id));
  });

  it('is taken to the minute, so that frames of 5 to 30 s have the same sources, and those of 4 and 4.5 minutes', () => {
    for (const id of ['moon', 'sky']) {
      for (const seconds of [5, 10, 15, 30]) expect(sourceOf(of(seconds), id)).toEqual(sourceOf(of(0), id));
      expect(sourceOf(of(240), id)).toEqual(sourceOf(of(270), id));
    }
  });
});
