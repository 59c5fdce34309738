import { anyHit, closestHit } from '../../core/geometry/cast-ray.ts';
import { add, normalize, scale, sub, type Vec3 } from '../../core/geometry/vec.ts';
import { buildWorld, type World } from '../../core/world/world.ts';
import { type Growth, pebbleSetup } from '../core/support/pebble-setup.ts';
import type { SampleTimes } from './page/growth.ts';

/** Rays a second in Node. */
export interface RayRates {
  readonly closest: number;
  readonly any: number;
}

export interface GrowthTimes {
  readonly growth: Growth;
  readonly samples: readonly SampleTimes[];
  readonly rays: readonly RayRates[];
}

const sizes = [3000, 30_000, 300_000];
const size = { width: 320, height: 180 };
const lamp: Vec3 = [5, 0.5, -8];

/** Rays from the camera through each pixel, and from what they meet to the lamp; the best of several rounds. */
const rayRates = (world: World, rounds: number): RayRates => {
  const { view, stage } = world;
  const directions = Array.from({ length: size.width * size.height }, (_, i) => {
    const [x, y] = [(i % size.width) + 0.5, Math.floor(i / size.width) + 0.5];
    const right = scale(view.right, view.tanHalfWidth * ((2 * x) / size.width - 1));
    const up = scale(view.up, view.tanHalfHeight * (1 - (2 * y) / size.height));
    return normalize(add(view.forward, add(right, up)));
  });
  const origins = directions.flatMap((direction): Vec3[] => {
    const hit = closestHit(stage.tree, view.position, direction);
    return hit ? [add(view.position, scale(direction, hit.t - 1e-4))] : [];
  });
  const rateOf = (count: number, shootAll: () => void) => {
    let least = Number.POSITIVE_INFINITY;
    for (let round = 0; round < rounds; round++) {
      const start = performance.now();
      shootAll();
      least = Math.min(least, performance.now() - start);
    }
    return (1000 * count) / least;
  };
  return {
    closest: rateOf(directions.length, () => {
      for (const direction of directions) closestHit(stage.tree, view.position, direction);
    }),
    any: rateOf(origins.length, () => {
      for (const origin of origins) anyHit(stage.tree, origin, sub(lamp, origin), 1);
    }),
  };
};

/** Rays over the same ground in Node, to go with the page’s samples. */
export const nodeRays = (growth: Growth): RayRates[] =>
  sizes.map((triangles) => {
    const setup = pebbleSetup(triangles, growth);
    return rayRates(buildWorld(setup, setup.schemes[0] as (typeof setup.schemes)[number]), 3);
  });

const ratios = (values: readonly number[]) => values.slice(1).map((value, i) => value / (values[i] as number));

export const growthLines = ({ growth, samples, rays }: GrowthTimes): string => {
  const row = (values: readonly number[]) =>
    `${values.map((value) => value.toFixed(1).padStart(7)).join(' ')}   ${ratios(values)
      .map((ratio) => `${ratio.toFixed(2)} x`)
      .join(', ')}`;
  return [
    `ground of ${samples.map(({ triangles }) => triangles).join(', ')} triangles, ${growth} pebbles`,
    `  one sample, ms                ${row(samples.map(({ sampleMs }) => sampleMs))}`,
    `  its light alone, ms           ${row(samples.map(({ lightMs }) => lightMs))}`,
    `  closest hits in Node, 1000/s  ${rays.map(({ closest }) => (closest / 1000).toFixed(0).padStart(7)).join(' ')}`,
    `  shadow rays in Node, 1000/s   ${rays.map(({ any }) => (any / 1000).toFixed(0).padStart(7)).join(' ')}`,
  ].join('\n');
};
