import { type Mesh, MeshBuilder } from '../mesh.ts';
import type { Vec3 } from '../vec.ts';
import { plateOf, type Site, siteOf } from './cells.ts';
import { naturalOutline, type Warp } from './outline.ts';
import { latticeValue, planeNoise } from './plane-noise.ts';
import { leastAcross, type SheetShape, sheetLiftMetres, smoothstep } from './sheet.ts';

/** How richly a plate is drawn. */
interface Detail {
  /** Corners that an edge between two corners of the plate gets. */
  readonly parts: number;
  /** Whether its rim is worn off. */
  readonly worn: boolean;
}

/** From rich to plain, with the triangles of a plate of twelve corners: few have more. */
const details: readonly Detail[] = [
  { parts: 4, worn: true },
  { parts: 3, worn: true },
  { parts: 2, worn: true },
  { parts: 2, worn: false },
  { parts: 1, worn: false },
];

/** Sides of a plate on average: six, as of any such division of the plane (Euler). */
const meanSides = 6;

/** Triangles of a plate of so many sides: its top as a fan about its middle, its wall, its worn rim. */
const platesTriangles = (sides: number, { parts, worn }: Detail): number => sides * parts * (worn ? 5 : 3);

/** Gaps take this share of the spacing, on average. */
const gapShare = 0.075;
/** A crack between groups is so many times as wide as that on average, one within a group so many times. */
const gapFactors = { between: 1.7, within: 0.6 } as const;

/** How wide the cracks are: those round groups of plates opened first and are the widest. */
const gapsOf = (spacing: number, seed: number) => {
  /** The group of a plate: whose site of a lattice three times as wide lies nearest. */
  const groupOf = ({ u, v }: Site): number => {
    const wide = 3.1 * spacing;
    const [i, j] = [Math.floor(u / wide), Math.floor(v / wide)];
    let [least, group] = [Number.POSITIVE_INFINITY, 0];
    for (let di = -1; di <= 1; di++)
      for (let dj = -1; dj <= 1; dj++) {
        const site = siteOf(i + di, j + dj, wide, seed ^ 0x3c6ef372);
        const apart = (site.u - u) ** 2 + (site.v - v) ** 2;
        if (apart < least) [least, group] = [apart, (site.i + 4096) * 8192 + site.j + 4096];
      }
    return group;
  };
  return (a: Site, b: Site): number => {
    const own = 0.5 + latticeValue(a.i + b.i, a.j + b.j, seed ^ 0x51ed270b);
    return gapShare * spacing * own * (groupOf(a) === groupOf(b) ? gapFactors.within : gapFactors.between);
  };
};

/** Points of an outline with its edges divided and bent a little, the same for both plates of a crack. */
const roughened = (outline: readonly (readonly [number, number])[], parts: number, warp: Warp): [number, number][] =>
  outline.flatMap(([u, v], k) => {
    const [nextU, nextV] = outline[(k + 1) % outline.length] as readonly [number, number];
    return Array.from({ length: parts }, (_, n): [number, number] => {
      const t = n / parts;
      return [...warp(u + t * (nextU - u), v + t * (nextV - v))];
    });
  });

interface Plate {
  readonly outline: readonly (readonly [number, number])[];
  readonly middle: readonly [number, number];
  readonly heightMetres: number;
  /** Slope of its top along u and v. */
  readonly tilt: readonly [number, number];
}

/** One plate: a flat top, a sloping rim if it is worn, and walls down to the ground. */
const addPlate = (builder: MeshBuilder, plate: Plate, worn: boolean): void => {
  const { outline, middle, heightMetres, tilt } = plate;
  const level = (u: number, v: number) =>
    Math.max(heightMetres + tilt[0] * (u - middle[0]) + tilt[1] * (v - middle[1]), 0.3 * heightMetres);
  const at = (u: number, v: number, up: number): Vec3 => [v, up, -u];
  const inward = worn ? 0.07 : 0;
  const tops = outline.map(([u, v]): Vec3 => {
    const [x, y] = [u + inward * (middle[0] - u), v + inward * (middle[1] - v)];
    return at(x, y, level(x, y));
  });
  const rims = outline.map(([u, v]) => at(u, v, worn ? 0.72 * level(u, v) : level(u, v)));
  const feet = outline.map(([u, v]) => at(u, v, 0));
  const centre = at(middle[0], middle[1], level(middle[0], middle[1]));
  outline.forEach((_, k) => {
    const n = (k + 1) % outline.length;
    const [a, b, ra, rb, fa, fb] = [tops[k], tops[n], rims[k], rims[n], feet[k], feet[n]] as [
      Vec3,
      Vec3,
      Vec3,
      Vec3,
      Vec3,
      Vec3,
    ];
    builder.triangle(centre, b, a);
    if (worn) builder.quad(a, b, rb, ra);
    builder.quad(ra, rb, fb, fa);
  });
};

/** Radius of a sheet of cracked mud that its triangles reach, metres, and how richly its plates are drawn. */
export const divideCracks = (shape: SheetShape): { readonly radiusMetres: number; readonly detail: Detail } => {
  // no plate reaches over the rim
  const plates = (radius: number) => (Math.PI * (radius - 0.75 * shape.spacingMetres) ** 2) / shape.spacingMetres ** 2;
  const room = (detail: Detail) => (0.93 * shape.maxTriangles) / platesTriangles(meanSides, detail);
  const plainest = details.at(-1) as Detail;
  const detail = details.find((each) => plates(shape.radiusMetres) <= room(each)) ?? plainest;
  const reach = shape.spacingMetres * (Math.sqrt(room(detail) / Math.PI) + 0.75);
  return { radiusMetres: Math.min(shape.radiusMetres, reach), detail };
};

/**
 * Cracked mud: flat plates with sharp edges, gaps down to the ground between them. Plates get thinner toward the rim.
 *
 * @returns corners [v, up, -u], metres, about the middle of the sheet
 */
export const cracksMesh = (given: SheetShape): Mesh => {
  const shape = leastAcross(given, 3);
  const { spacingMetres, seed } = shape;
  // a plate in the ground plane would fight with it
  const heightMetres = Math.max(shape.heightMetres, sheetLiftMetres);
  const { radiusMetres, detail } = divideCracks(shape);
  const noise = planeNoise(seed);
  const bend: Warp = (u, v) => {
    const [x, y] = [(2.2 * u) / spacingMetres, (2.2 * v) / spacingMetres];
    return [u + 0.1 * spacingMetres * noise(x, y), v + 0.1 * spacingMetres * noise(x + 60, y + 30)];
  };
  const outlineOf = naturalOutline(radiusMetres, 0.2, 9, seed);
  const warp: Warp = (u, v) => outlineOf(...bend(u, v));
  const gap = gapsOf(spacingMetres, seed);
  const widest = 1.5 * gapShare * gapFactors.between * spacingMetres;
  const builder = new MeshBuilder();
  const most = Math.ceil(radiusMetres / spacingMetres) + 1;
  for (let i = -most; i < most; i++)
    for (let j = -most; j < most; j++) {
      const site = siteOf(i, j, spacingMetres, seed);
      const away = Math.sqrt(site.u ** 2 + site.v ** 2) / (radiusMetres - 0.75 * spacingMetres);
      if (away > 1) continue;
      // sites lie 0.22 spacings apart at least and gaps are under 0.2 wide, so that no plate is cut away whole
      const outline = roughened(plateOf(site, spacingMetres, seed, gap, widest), detail.parts, warp);
      const own = 0.8 + 0.2 * latticeValue(i, j, seed ^ 0x7f4a7c15);
      const slope = (salt: number) => (0.12 * heightMetres * (latticeValue(i, j, seed ^ salt) - 0.5)) / spacingMetres;
      const height = heightMetres * own * Math.max(1 - smoothstep(0.6, 1, away), 0.05) * 0.94;
      addPlate(
        builder,
        { outline, middle: warp(site.u, site.v), heightMetres: height, tilt: [slope(0x1b56c4e9), slope(0x41c64e6d)] },
        detail.worn,
      );
    }
  return builder.build();
};
