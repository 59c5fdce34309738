import type { Mesh } from '../mesh.ts';
import { type Rough, roughCreaseRadians, roughened } from '../roughen.ts';
import { meshOfSkin, type Skin, SkinBuilder } from '../skin.ts';
import { areaOf, counterClockwise, type Point2, triangulate } from '../triangulate.ts';
import { distance, mix, type Vec3 } from '../vec.ts';

/** A closed outline across the part: [east, up] in metres. */
export interface LoftSection {
  readonly northMetres: number;
  readonly outline: readonly Point2[];
}

/** Into how many pieces the stretches of the outlines and the spans between sections are divided. */
export interface LoftDivisions {
  readonly round: readonly number[];
  readonly spans: readonly number[];
  readonly cellMetres: number;
}

/** Corners of a section in order, each stretch divided evenly. */
const dividedSection = ({ northMetres, outline }: LoftSection, round: readonly number[] | null): Vec3[] =>
  counterClockwise(outline).flatMap(([east, up], i, points) => {
    const [nextEast, nextUp] = points[(i + 1) % points.length] as Point2;
    const pieces = round?.[i] ?? 1;
    return Array.from({ length: pieces }, (_, k): Vec3 => {
      const t = k / pieces;
      return [east * (1 - t) + nextEast * t, up * (1 - t) + nextUp * t, -northMetres];
    });
  });

/** All rings of corners from south to north. */
const ringsOf = (sections: readonly LoftSection[], divisions: LoftDivisions | null): Vec3[][] => {
  const own = sections.map((section) => dividedSection(section, divisions?.round ?? null));
  return own.flatMap((south, s) => {
    const north = own[s + 1];
    const pieces = north ? (divisions?.spans[s] ?? 1) : 1;
    return Array.from({ length: pieces }, (_, k) =>
      k === 0 || !north ? south : south.map((p, i) => mix(p, north[i] as Vec3, k / pieces)),
    );
  });
};

const skinOf = (rings: readonly (readonly Vec3[])[]): Skin => {
  const builder = new SkinBuilder();
  const corners = rings.map((ring) => ring.map((p) => builder.corner(p)));
  const [south, north] = [rings[0] as readonly Vec3[], rings.at(-1) as readonly Vec3[]];
  const count = south.length;
  const lid = (ring: readonly Vec3[], first: number, facesSouth: boolean) => {
    const triangles = triangulate(ring.map(([east, up]): Point2 => [east, up]));
    for (let t = 0; t < triangles.length; t += 3) {
      const [a, b, c] = triangles.slice(t, t + 3).map((i) => first + i) as [number, number, number];
      if (facesSouth) builder.triangle(a, b, c);
      else builder.triangle(a, c, b);
    }
  };
  lid(south, 0, true);
  lid(north, (rings.length - 1) * count, false);
  for (let r = 0; r + 1 < rings.length; r++)
    for (let k = 0; k < count; k++) {
      const next = (k + 1) % count;
      const place = (ring: number, i: number) => rings[ring]?.[i] as Vec3;
      const at = (ring: number, i: number) => corners[ring]?.[i] as number;
      // the shorter diagonal follows a twisted skin better
      const isFirst = distance(place(r, k), place(r + 1, next)) <= distance(place(r, next), place(r + 1, k));
      if (isFirst) builder.quad(at(r, k), at(r + 1, k), at(r + 1, next), at(r, next));
      else builder.quad(at(r, next), at(r, k), at(r + 1, k), at(r + 1, next));
    }
  return builder.build();
};

/** How far the skin may move at a section: about a third of its half thickness. */
const roomOf = ({ outline }: LoftSection): number => {
  const rim = outline.reduce((sum, [u, v], i) => {
    const [nextU, nextV] = outline[(i + 1) % outline.length] as Point2;
    return sum + Math.hypot(nextU - u, nextV - v);
  }, 0);
  return (0.7 * Math.abs(areaOf(outline))) / rim;
};

/**
 * A skin over closed sections that follow each other to the north, with flat lids.
 *
 * @param sections from south to north, at least two, each with the same number of points
 * @param creaseRadians faces that meet at a smaller angle look curved
 */
export const loftMesh = (sections: readonly LoftSection[], creaseRadians: number): Mesh =>
  meshOfSkin(skinOf(ringsOf(sections, null)), creaseRadians);

/** The same divided finely and uneven. */
export const roughLoftMesh = (
  sections: readonly LoftSection[],
  creaseRadians: number,
  rough: Rough,
  divisions: LoftDivisions,
): Mesh => {
  const rings = ringsOf(sections, divisions);
  const rooms = sections.flatMap((section, s) => {
    const next = sections[s + 1];
    const pieces = next ? (divisions.spans[s] as number) : 1;
    const [own, other] = [roomOf(section), next ? roomOf(next) : 0];
    return Array.from({ length: pieces }, (_, k) => own + ((other - own) * k) / pieces);
  });
  const count = (rings[0] as readonly Vec3[]).length;
  const skin = roughened(
    skinOf(rings),
    rough,
    divisions.cellMetres,
    (c) => rooms[Math.floor(c / count)] as number,
    true,
  );
  return meshOfSkin(skin, Math.max(creaseRadians, roughCreaseRadians));
};
