import { describe, expect, it } from 'vitest';
import { skyLevel } from '../../../core/readings/sky-level.ts';
import { smallPictures } from '../../../core/readings/small-picture.ts';
import type { Scheme } from '../../../core/setup/schema/setup.ts';
import { buildWorld } from '../../../core/world/world.ts';
import { boxAt } from '../support/cautions.ts';
import { onePassSetup } from '../support/scenes.ts';

const levelOf = (illuminanceLux: number, subjects: readonly object[] = [], aimUp = 1.5): number | null => {
  const setup = onePassSetup({
    camera: { position: [0, -8, 1.5], aim: [0, 0, aimUp] },
    place: { skylight: { illuminanceLux, temperatureKelvin: 5600 } },
    subjects,
    pass: { waypoints: [{ position: [2, -6, 1], aim: [0, 0, 1] }] },
  });
  const world = buildWorld(setup, setup.schemes[0] as Scheme);
  const [picture] = smallPictures(world);
  return picture ? skyLevel(world, picture) : null;
};

describe('skyLevel', () => {
  it('rises by a stop for twice the light of an even sky (abs 1e-9)', () => {
    expect((levelOf(0.002) ?? 0) - (levelOf(0.001) ?? 9)).toBeCloseTo(1, 9);
  });

  it('is none of a black sky, of a picture that looks down, and of a chink over a wall', () => {
    expect(levelOf(0)).toBeNull();
    expect(levelOf(0.001, [], -60)).toBeNull();
    // the upper edge looks up by a tangent of a half from 1.5 m, 8 m before the wall: to 5.5 m
    expect(levelOf(0.001, [boxAt('wall', [0, 0.5, 0], [60, 1, 5.4])])).toBeNull();
    expect(levelOf(0.001, [boxAt('wall', [0, 0.5, 0], [60, 1, 4])])).not.toBeNull();
  });
});
