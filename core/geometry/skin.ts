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
  // grown by doubling: half the time of lists of plain numbers
  private places = new Float64Array(384);
  private placeLength = 0;
  private triangles = new Uint32Array(768);
  private triangleLength = 0;

  /** Adds a corner and gives its number. */
  corner([x, y, z]: Vec3): number {
    const at = this.placeLength;
    if (at === this.places.length) {
      const grown = new Float64Array(2 * at);
      grown.set(this.places);
      this.places = grown;
    }
    this.places[at] = x;
    this.places[at + 1] = y;
    this.places[at + 2] = z;
    this.placeLength = at + 3;
    return at / 3;
  }

  triangle(a: number, b: number, c: number): void {
    if (a === b || b === c || c === a) return;
    const at = this.triangleLength;
    if (at === this.triangles.length) {
      const grown = new Uint32Array(2 * at);
      grown.set(this.triangles);
      this.triangles = grown;
    }
    this.triangles[at] = a;
    this.triangles[at + 1] = b;
    this.triangles[at + 2] = c;
    this.triangleLength = at + 3;
  }

  /** Two triangles; corners counter-clockwise seen from outside. */
  quad(a: number, b: number, c: number, d: number): void {
    this.triangle(a, b, c);
    this.triangle(a, c, d);
  }

  build(): Skin {
    return {
      places: this.places.slice(0, this.placeLength),
      triangles: this.triangles.slice(0, this.triangleLength),
    };
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
