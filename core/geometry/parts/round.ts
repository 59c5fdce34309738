import { type Mesh, MeshBuilder } from '../mesh.ts';
import { normalize, type Vec3 } from '../vec.ts';

/** A place on a profile turned about the vertical: distance from the axis, height, and the outward normal there. */
interface ProfilePoint {
  readonly radius: number;
  readonly height: number;
  readonly normal: readonly [outward: number, upward: number];
}

const onCircle = (turn: number, radius: number, height: number): Vec3 => [
  Math.cos(turn) * radius,
  height,
  -Math.sin(turn) * radius,
];

/** From how many sides on a round part is meant to look round; fewer are a post with flat faces. */
const fewestRoundSides = 8;

/** A skin between consecutive profile points, bottom to top, turned about the vertical axis; smooth unless sides are few. */
const turned = (builder: MeshBuilder, profile: readonly ProfilePoint[], sides: number): void => {
  const normalAt = (p: ProfilePoint, turn: number): Vec3 => normalize(onCircle(turn, p.normal[0], p.normal[1]));
  for (let s = 0; s < sides; s++) {
    const [a, b] = [(2 * Math.PI * s) / sides, (2 * Math.PI * (s + 1)) / sides];
    for (let k = 0; k + 1 < profile.length; k++) {
      const low = profile[k] as ProfilePoint;
      const high = profile[k + 1] as ProfilePoint;
      builder.quad(
        onCircle(a, low.radius, low.height),
        onCircle(b, low.radius, low.height),
        onCircle(b, high.radius, high.height),
        onCircle(a, high.radius, high.height),
        sides < fewestRoundSides
          ? undefined
          : [normalAt(low, a), normalAt(low, b), normalAt(high, b), normalAt(high, a)],
      );
    }
  }
};

/** A flat lid, facing up or down. */
const lid = (builder: MeshBuilder, radius: number, height: number, sides: number, up: boolean): void => {
  for (let s = 0; s < sides; s++) {
    const [a, b] = [(2 * Math.PI * s) / sides, (2 * Math.PI * (s + 1)) / sides];
    const [first, second] = up ? [a, b] : [b, a];
    builder.triangle([0, height, 0], onCircle(first, radius, height), onCircle(second, radius, height));
  }
};

/** A closed cylinder standing on the origin, tapering from bottom to top; a top radius of 0 is a cone. */
export const cylinderMesh = (bottomRadius: number, topRadius: number, height: number, sides: number): Mesh => {
  const builder = new MeshBuilder();
  const normal = [height, bottomRadius - topRadius] as const;
  turned(
    builder,
    [
      { radius: bottomRadius, height: 0, normal },
      { radius: topRadius, height, normal },
    ],
    sides,
  );
  if (bottomRadius > 0) lid(builder, bottomRadius, 0, sides, false);
  if (topRadius > 0) lid(builder, topRadius, height, sides, true);
  return builder.build();
};

/** Profile of a half sphere between two latitudes in radians, centred at `centreHeight`, stretched upward by `stretch`. */
const arc = (radius: number, stretch: number, centreHeight: number, from: number, to: number, rings: number) =>
  Array.from({ length: rings + 1 }, (_, k): ProfilePoint => {
    const latitude = from + ((to - from) * k) / rings;
    const [c, s] = [Math.max(Math.cos(latitude), 0), Math.sin(latitude)];
    return {
      radius: Math.abs(c) < 1e-9 ? 0 : radius * c,
      height: centreHeight + radius * stretch * s,
      normal: [c * stretch, s],
    };
  });

/** A ball resting on the origin: `radius` across, `halfHeight` from centre to top. */
export const sphereMesh = (radius: number, halfHeight: number, sides: number): Mesh => {
  const builder = new MeshBuilder();
  turned(builder, arc(radius, halfHeight / radius, halfHeight, -Math.PI / 2, Math.PI / 2, Math.ceil(sides / 2)), sides);
  return builder.build();
};

/** A cylinder with round ends resting on the origin; `height` is the whole, at least twice the radius. */
export const capsuleMesh = (radius: number, height: number, sides: number): Mesh => {
  const builder = new MeshBuilder();
  const rings = Math.ceil(sides / 4);
  const bottom = arc(radius, 1, radius, -Math.PI / 2, 0, rings);
  const top = arc(radius, 1, Math.max(height - radius, radius), 0, Math.PI / 2, rings);
  turned(builder, [...bottom, ...top], sides);
  return builder.build();
};

/** A flat rectangle lying on the origin, facing up; x across, z deep. */
export const planeMesh = (width: number, depth: number): Mesh => {
  const builder = new MeshBuilder();
  const [x, z] = [width / 2, depth / 2];
  builder.quad([-x, 0, z], [x, 0, z], [x, 0, -z], [-x, 0, -z]);
  return builder.build();
};
