import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Vec3 } from '../../../core/geometry/vec.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import { traceLayers } from '../../../core/trace/layer.ts';
import { buildWorld, type World } from '../../../core/world/world.ts';

/** The hut with a lantern inside, out of the lens's sight; looked at from a place of the test's choice. */
const hut = (): { world: World; lantern: World['frames'][number]['lights'][number] } => {
  const setup = parseSetup(readFileSync('assets/setups/turf-hut.json', 'utf8'));
  const scheme = setup.schemes[0];
  if (!scheme) throw new Error('no scheme');
  const world = buildWorld(setup, scheme);
  const lantern = world.frames.flatMap(({ lights }) => lights).find(({ id }) => id === 'lantern');
  if (!lantern) throw new Error('no lantern');
  return { world, lantern };
};

/** Mean colour that the lantern gives a patch of ground, looked at from straight above, 16 x 16 looks. */
const groundPatch = (east: number, north: number, bounces: 0 | 1 | 2): Vec3 => {
  const { world, lantern } = hut();
  const above = {
    ...world.view,
    position: [east, 1.5, -north] as Vec3,
    forward: [0, -1, 0] as Vec3,
    right: [1, 0, 0] as Vec3,
    up: [0, 0, -1] as Vec3,
    tanHalfWidth: 0.2,
    tanHalfHeight: 0.2,
  };
  const size = { width: 8, height: 8, samples: 256 };
  const [layer = new Float64Array()] = traceLayers(world.stage, above, [lantern.source], size, bounces);
  const mean = [0, 1, 2].map((c) => {
    const own = layer.filter((_, i) => i % 3 === c);
    return (own.reduce((sum, v) => sum + v, 0) / own.length) * (lantern.strength[c] as number);
  });
  return mean as unknown as Vec3;
};

describe('bounced light', () => {
  // before the door, but off to the side that the lantern's own light does not reach
  const [east, north] = [0.9, 6.6] as const;

  it('carries the lantern’s light out of the hut onto ground that the lantern itself does not reach', () => {
    expect(Math.max(...groundPatch(east, north, 0))).toBe(0);
    const [once, twice] = [groundPatch(east, north, 1), groundPatch(east, north, 2)];
    expect(once[0]).toBeGreaterThan(0);
    // the second bounce only ever adds
    expect(twice[0]).toBeGreaterThan(once[0]);
  });

  it('brings it out warm: the gel’s red over blue, made warmer still by walls that reflect red more than blue', () => {
    const { lantern } = hut();
    const [r, , b] = groundPatch(east, north, 2);
    // the grass itself: 0.10 red, 0.06 blue
    const fromLampAndGrass = ((lantern.strength[0] / Math.max(lantern.strength[2], 1e-9)) * 0.1) / 0.06;
    expect(r / b).toBeGreaterThan(fromLampAndGrass);
  });
});
