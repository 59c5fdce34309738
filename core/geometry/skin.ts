import { creasedNormals } from './crease.ts';
import type { Mesh } from './mesh.ts';
import type { Vec3 } from './vec.ts';

/** A surface whose triangles share their corners, so that moving a corner opens no crack. */
export interface Skin {
  /** Three numbers a corner, metres. */
  readonly places: Float64Array;
  /** Three corners a triangle, counter-clockwise seen from outside. */
  readonly triangles: Uint32Array;
}

/** Collects corners and the triangles between them. Triangles that name a corner twice are left out. */
export class SkinBuilder {
  private readonly places: number[] = [];
  private readonly triangles: number[] = [];

  get cornerCount(): number {
    return this.places.length / 3;
  }

  /** Adds a corner and gives its number. */
  corner([x, y, z]: Vec3): number {
    return this.places.push(x, y, z) / 3 - 1;
  }

  triangle(a: number, b: number, c: number): void {
    if (a !== b && b !== c && c !== a) this.triangles.push(a, b, c);
  }

  /** Two triangles; corners counter-clockwise seen from outside. */
  quad(a: number, b: number, c: number, d: number): void {
    this.triangle(a, b, c);
    this.triangle(a, c, d);
  }

  build(): Skin {
    return { places: new Float64Array(this.places), triangles: new Uint32Array(this.triangles) };
  }
}

/** The triangles of a skin with normals that keep edges sharper than the crease angle. */
export const meshOfSkin = ({ places, triangles }: Skin, creaseRadians: number): Mesh => {
  const positions = new Float64Array(triangles.length * 3);
  for (let c = 0; c < triangles.length; c++) {
    const from = 3 * (triangles[c] as number);
    for (let axis = 0; axis < 3; axis++) positions[3 * c + axis] = places[from + axis] as number;
  }
  return { positions, normals: creasedNormals(places, triangles, creaseRadians) };
};

/** Volume inside a closed skin, cubic metres (divergence theorem); negative when it is inside out. */
export const volumeOfSkin = ({ places, triangles }: Skin): number => {
  let six = 0;
  const p = (corner: number, axis: number) => places[3 * corner + axis] as number;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [triangles[t] as number, triangles[t + 1] as number, triangles[t + 2] as number];
    six +=
      p(a, 0) * (p(b, 1) * p(c, 2) - p(b, 2) * p(c, 1)) +
      p(a, 1) * (p(b, 2) * p(c, 0) - p(b, 0) * p(c, 2)) +
      p(a, 2) * (p(b, 0) * p(c, 1) - p(b, 1) * p(c, 0));
  }
  return six / 6;
};
