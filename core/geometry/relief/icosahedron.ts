import { cross, dot, length, normalize, sub, type Vec3 } from '../vec.ts';

const golden = (1 + Math.sqrt(5)) / 2;

/** The twelve corners of an icosahedron, on the unit sphere. */
export const icosahedronCorners: readonly Vec3[] = (
  [
    [1, golden],
    [1, -golden],
    [-1, golden],
    [-1, -golden],
  ] as const
)
  .flatMap(([a, b]): Vec3[] => [
    [a, b, 0],
    [0, a, b],
    [b, 0, a],
  ])
  .map(normalize);

const edge = Math.min(
  ...icosahedronCorners.slice(1).map((corner) => length(sub(corner, icosahedronCorners[0] as Vec3))),
);

/** Its twenty faces, corners counter-clockwise seen from outside. */
export const icosahedronFaces: readonly (readonly [number, number, number])[] = (() => {
  const at = (i: number) => icosahedronCorners[i] as Vec3;
  const near = (i: number, j: number) => length(sub(at(i), at(j))) < edge * 1.01;
  const faces: [number, number, number][] = [];
  for (let i = 0; i < 12; i++)
    for (let j = i + 1; j < 12; j++)
      for (let k = j + 1; k < 12; k++) {
        if (!near(i, j) || !near(j, k) || !near(i, k)) continue;
        const outward = cross(sub(at(j), at(i)), sub(at(k), at(i)));
        faces.push(dot(outward, at(i)) > 0 ? [i, j, k] : [i, k, j]);
      }
  return faces;
})();
