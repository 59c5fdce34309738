import { describe, expect, it } from 'vitest';
import { agreementReading } from '../../../core/readings/agreement-reading.ts';
import { type AmbientWays, ambientWays } from '../../../core/readings/ambient-ways.ts';
import { type ShadowReading, shadowReading } from '../../../core/readings/shadow-reading.ts';
import { degreesApart } from '../../../core/units/angle.ts';
import { onlyPassOf } from '../support/read-pass.ts';
import { onePassSetup } from '../support/scenes.ts';

const post = { id: 'post', name: 'Post', parts: [{ kind: 'cylinder', radiusMetres: 0.2, heightMetres: 2 }] };
const { world } = onlyPassOf(
  onePassSetup({
    camera: { position: [0, -8, 1.6], aim: [0, 0, 1] },
    subjects: [post],
    pass: { waypoints: [{ position: [0, -4, 3], aim: [0, 0, 1] }] },
  }),
);
/** The post's shadow under a lamp 4 m from it at a bearing. */
const shadowFrom = (bearingDegrees: number): ShadowReading => {
  const b = (bearingDegrees * Math.PI) / 180;
  const [subject] = world.stage.subjects;
  if (!subject) throw new Error('no post');
  return shadowReading(world.stage, world.view, subject, [4 * Math.sin(b), 3, -4 * Math.cos(b)]);
};
/** Where moon and glow of a place stand, from the lights of its world. */
const waysOf = (fields: object): AmbientWays => {
  const setup = onePassSetup({
    camera: { position: [0, -8, 1.6], aim: [0, 0, 1] },
    pass: { waypoints: [{ position: [0, -4, 3], aim: [0, 0, 1] }] },
    place: fields,
  });
  const { worldFrame } = onlyPassOf(setup);
  return ambientWays(setup.place, worldFrame);
};
const moonAt = (bearingDegrees: number, more: object = {}): AmbientWays =>
  waysOf({ moonlight: { bearingDegrees, altitudeDegrees: 25, illuminanceLux: 0.1, ...more } });
const dome = (bearingDegrees: number, luminanceAt10DegreesCdM2: number) => ({
  name: '',
  bearingDegrees,
  widthDegrees: 40,
  luminanceAt10DegreesCdM2,
});

describe('agreementReading', () => {
  it.each([
    [40, 40, 0],
    [40, 80, 40],
    [350, 20, 30],
    [20, 350, 30],
    [90, 270, 180],
    [0, 360, 0],
    [200, 75, 125],
  ])('lamp at bearing %d, moon at %d: shadows %d degrees apart, 0 to 180 (abs 1e-6)', (lamp, moon, expected) => {
    const { moonDegrees, glowDegrees } = agreementReading(shadowFrom(lamp), 20, moonAt(moon));
    expect(Math.abs((moonDegrees ?? Number.NaN) - expected)).toBeLessThanOrEqual(1e-6);
    expect(glowDegrees).toBeNull();
  });

  it('takes the brightest of several domes, and none that is dark', () => {
    const read = (...glowDomes: object[]) => agreementReading(shadowFrom(90), 20, waysOf({ glowDomes })).glowDegrees;
    expect(read(dome(80, 0.001), dome(190, 0.01), dome(300, 0.005))).toBeCloseTo(100, 6);
    expect(read(dome(80, 0))).toBeNull();
    expect(read()).toBeNull();
  });

  it('is null without a moon, with one that gives no light, and with one that stands steeply overhead', () => {
    const shadow = shadowFrom(90);
    expect(agreementReading(shadow, 20, waysOf({})).moonDegrees).toBeNull();
    expect(agreementReading(shadow, 20, moonAt(90, { illuminanceLux: 0 })).moonDegrees).toBeNull();
    expect(agreementReading(shadow, 20, moonAt(90, { altitudeDegrees: 88 })).moonDegrees).toBeNull();
  });

  it('is null for a lamp steeply overhead, whose shadow has no way to point, and without a subject', () => {
    const both: AmbientWays = { moonBearingDegrees: 90, glowBearingDegrees: 0 };
    expect(agreementReading(shadowFrom(90), 86, both)).toEqual({ moonDegrees: null, glowDegrees: null });
    expect(agreementReading(null, 20, both)).toEqual({ moonDegrees: null, glowDegrees: null });
  });

  it('a glow counts where it is brighter ten degrees up than a plain sky of E / pi, and goes at that', () => {
    const even = 0.0007 / Math.PI;
    const read = (luminance: number) => waysOf({ glowDomes: [dome(80, luminance)] }).glowBearingDegrees;
    expect(read(even * 1.02)).toBeCloseTo(80, 9);
    expect(read(even * 0.98)).toBeNull();
  });

  it('a moon counts from a tenth of the light of the sky on, and goes under it', () => {
    expect(moonAt(90, { illuminanceLux: 0.000071 }).moonBearingDegrees).toBeCloseTo(90, 9);
    expect(moonAt(90, { illuminanceLux: 0.000069 }).moonBearingDegrees).toBeNull();
  });
});

// the worked scene of shared/reference/sky.md, section 3: 2026-08-20 20:30 at Sydney's clocks,
// latitude -33, longitude 149: moon 56.02 degrees up at bearing 272.90
describe('agreementReading under the sky of an hour', () => {
  const hour = (northDegrees: number, more: object = {}) => ({
    latitudeDegrees: -33,
    longitudeDegrees: 149,
    localTime: '2026-08-20T20:30',
    timeZone: 'Australia/Sydney',
    northDegrees,
    sky: {},
    ...more,
  });

  it.each([0, 40, 310])(
    'takes the moon of the hour, from the scene’s north at %d degrees: true bearing less north (abs 0.02)',
    (north) => {
      const { moonBearingDegrees } = waysOf(hour(north));
      expect(degreesApart(moonBearingDegrees ?? Number.NaN, 272.9 - north)).toBeLessThanOrEqual(0.02);
      const { moonDegrees } = agreementReading(shadowFrom(272.9 - north), 20, waysOf(hour(north)));
      expect(moonDegrees).toBeLessThanOrEqual(0.02);
    },
  );

  it('has no moon where it is down', () => {
    // rose 05:35 and set 15:43 that day (sky.md 3)
    expect(waysOf(hour(0, { localTime: '2026-08-11T20:30' })).moonBearingDegrees).toBeNull();
  });

  it('takes the bearing of a town as a true one, and leaves out a town that the moonlit sky outshines', () => {
    const dark = (luminance: number) =>
      waysOf(hour(40, { localTime: '2026-08-11T20:30', glowDomes: [dome(100, luminance)] })).glowBearingDegrees;
    expect(dark(0.01)).toBeCloseTo(60, 9);
    expect(dark(0.00001)).toBeNull();
    // a full moon of 2026-08-28 makes the zenith some 18 mag/arcsec2 (sky.md 4.5), 0.007 cd/m2, brighter still low down
    const moonlit = (luminance: number) =>
      waysOf(hour(40, { localTime: '2026-08-28T22:30', glowDomes: [dome(100, luminance)] })).glowBearingDegrees;
    expect(moonlit(0.002)).toBeNull();
    expect(dark(0.002)).toBeCloseTo(60, 9);
    expect(moonlit(0.5)).toBeCloseTo(60, 9);
  });
});
