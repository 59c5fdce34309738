import { describe, expect, it } from 'vitest';
import { beamEscape } from '../../../core/readings/beam-escape.ts';
import { eyeLux } from '../../../core/readings/eye-light.ts';
import { flareReading } from '../../../core/readings/flare-reading.ts';
import { lensReading } from '../../../core/readings/lens-reading.ts';
import { middleMoment, momentsOf } from '../../../core/readings/moments.ts';
import { nearToFar } from '../../../core/readings/near-to-far.ts';
import { boxAt } from '../support/cautions.ts';
import { onlyPassOf } from '../support/read-pass.ts';
import { onePassSetup } from '../support/scenes.ts';

const {
  world,
  worldFrame,
  light: lamp,
} = onlyPassOf(
  onePassSetup({
    camera: { position: [0, -8, 1.5], aim: [0, 0, 1] },
    place: { moonlight: { bearingDegrees: 180, altitudeDegrees: 10, illuminanceLux: 0.1 } },
    subjects: [boxAt('wall', [0, 1, 0], [6, 0.5, 3])],
    pass: { waypoints: [{ position: [4, 0, 1], aim: [0, 0.7, 1] }] },
  }),
);
const ambient = worldFrame.lights.filter(({ source }) => source.kind !== 'lamp');

describe('what is read of lamps', () => {
  it('has moon and sky to ask', () => {
    expect(ambient.map(({ id }) => id)).toEqual(['moon', 'sky']);
  });

  it.each(ambient)('of the $id: it has no near and far end on a wall, as the lamp beside it has', (light) => {
    expect(nearToFar(world, lamp, 'wall')?.nearOverFarStops).toBeGreaterThan(1);
    expect(nearToFar(world, light, 'wall')).toBeNull();
  });

  it.each(ambient)('of the $id: no bare lamp is seen, none shines into the lens or into eyes', (light) => {
    expect(lensReading(world, light)).toEqual({ seenShare: 0, shines: false, hiddenBy: null });
    expect(flareReading(world, light, worldFrame, 90)).toBeNull();
    expect(eyeLux(world.stage, light, [0, 1.6, 0])).toBe(0);
  });

  it.each(ambient)('of the $id: it has no beam and no way, and to ask for them is a mistake', (light) => {
    expect(() => beamEscape(world.stage, light)).toThrow('only lamps have a beam');
    expect(() => middleMoment(light)).toThrow('only lamps have a place');
    expect(() => momentsOf(light)).toThrow('only lamps have a place');
  });
});
