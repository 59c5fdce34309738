import { describe, expect, it } from 'vitest';
import { type Ambient, agreementReading } from '../../../core/readings/agreement-reading.ts';
import { type ShadowReading, shadowReading } from '../../../core/readings/shadow-reading.ts';
import { place } from '../../../core/setup/schema/place.ts';
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
const ambient = (fields: object): Ambient => place.parse(fields);
const moonAt = (bearingDegrees: number, more: object = {}): Ambient =>
  ambient({ moonlight: { bearingDegrees, altitudeDegrees: 25, illuminanceLux: 0.1, ...more } });
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
    const read = (...glowDomes: object[]) => agreementReading(shadowFrom(90), 20, ambient({ glowDomes })).glowDegrees;
    expect(read(dome(80, 0.001), dome(190, 0.01), dome(300, 0.005))).toBeCloseTo(100, 6);
    expect(read(dome(80, 0))).toBeNull();
    expect(read()).toBeNull();
  });

  it('is null without a moon, with one that gives no light, and with one that stands steeply overhead', () => {
    const shadow = shadowFrom(90);
    expect(agreementReading(shadow, 20, ambient({})).moonDegrees).toBeNull();
    expect(agreementReading(shadow, 20, moonAt(90, { illuminanceLux: 0 })).moonDegrees).toBeNull();
    expect(agreementReading(shadow, 20, moonAt(90, { altitudeDegrees: 88 })).moonDegrees).toBeNull();
  });

  it('is null for a lamp steeply overhead, whose shadow has no way to point, and without a subject', () => {
    const both = { ...moonAt(90), glowDomes: ambient({ glowDomes: [dome(0, 0.01)] }).glowDomes };
    expect(agreementReading(shadowFrom(90), 86, both)).toEqual({ moonDegrees: null, glowDegrees: null });
    expect(agreementReading(null, 20, both)).toEqual({ moonDegrees: null, glowDegrees: null });
  });
});
