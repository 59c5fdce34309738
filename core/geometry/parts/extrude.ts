import { type Skin, SkinBuilder } from '../skin.ts';
import { counterClockwise, type Point2, triangulate } from '../triangulate.ts';
import type { Vec3 } from '../vec.ts';

/**
 * A flat outline with holes drawn out into a solid.
 *
 * @param outline either way round, meeting neither itself nor a hole
 * @param along where the solid begins and ends along its third axis
 * @param place from (u, v, w) to a point; keeps right-handed axes right-handed
 */
export const extruded = (
  outline: readonly Point2[],
  holes: readonly (readonly Point2[])[],
  along: readonly [low: number, high: number],
  place: (u: number, v: number, w: number) => Vec3,
): Skin => {
  const rim = counterClockwise(outline);
  const inner = holes.map((hole) => [...counterClockwise(hole)].reverse());
  const builder = new SkinBuilder();
  const [low, high] = along.map((w) => [...rim, ...inner.flat()].map(([u, v]) => builder.corner(place(u, v, w)))) as [
    number[],
    number[],
  ];
  const at = (corners: readonly number[], i: number) => corners[i] as number;
  const lid = triangulate(rim, inner);
  for (let t = 0; t < lid.length; t += 3) {
    const [a, b, c] = [lid[t] as number, lid[t + 1] as number, lid[t + 2] as number];
    builder.triangle(at(high, a), at(high, b), at(high, c));
    builder.triangle(at(low, a), at(low, c), at(low, b));
  }
  let first = 0;
  for (const loop of [rim, ...inner]) {
    for (let k = 0; k < loop.length; k++) {
      const [a, b] = [first + k, first + ((k + 1) % loop.length)];
      builder.quad(at(low, a), at(low, b), at(high, b), at(high, a));
    }
    first += loop.length;
  }
  return builder.build();
};
