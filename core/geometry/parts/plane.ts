import { type Mesh, MeshBuilder } from '../mesh.ts';
import { type Rough, roughCreaseRadians, roughened } from '../roughen.ts';
import { meshOfSkin, SkinBuilder } from '../skin.ts';

/** A flat rectangle lying on the origin, facing up; x across, z deep. */
export const planeMesh = (width: number, depth: number): Mesh => {
  const builder = new MeshBuilder();
  const [x, z] = [width / 2, depth / 2];
  builder.quad([-x, 0, z], [x, 0, z], [x, 0, -z], [-x, 0, -z]);
  return builder.build();
};

/** An uneven sheet lying on the origin, facing up, in as many pieces across and deep. */
export const roughPlaneMesh = (
  width: number,
  depth: number,
  rough: Rough,
  [across, deep]: readonly [across: number, deep: number],
): Mesh => {
  const builder = new SkinBuilder();
  for (let j = 0; j <= deep; j++)
    for (let i = 0; i <= across; i++) builder.corner([width * (i / across - 0.5), 0, depth * (0.5 - j / deep)]);
  const at = (i: number, j: number) => j * (across + 1) + i;
  for (let j = 0; j < deep; j++)
    for (let i = 0; i < across; i++) builder.quad(at(i, j), at(i + 1, j), at(i + 1, j + 1), at(i, j + 1));
  const cell = Math.max(width / across, depth / deep);
  return meshOfSkin(
    roughened(builder.build(), rough, cell, () => Number.POSITIVE_INFINITY, false),
    roughCreaseRadians,
  );
};
