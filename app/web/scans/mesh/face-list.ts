import { counted, inWords, maxReadTriangles } from '../limits.ts';
import { ScanError } from '../scan-error.ts';
import { GrowingNumbers } from './growing-numbers.ts';
import { polygonTriangles } from './polygon-triangles.ts';

/** Collects faces with any number of corners, to be cut into triangles once all corners are known. */
export class FaceList {
  private readonly corners = new GrowingNumbers(Uint32Array);
  private readonly sizes = new GrowingNumbers(Uint32Array);
  private triangleCount = 0;

  /** Takes a face of so many corners, which lie at the start of `corners`. */
  add(corners: ArrayLike<number>, count: number): void {
    if (count < 3) return;
    this.triangleCount += count - 2;
    if (this.triangleCount > maxReadTriangles)
      throw new ScanError(`It has more than ${inWords(maxReadTriangles)} triangles, which is the most that is read`);
    this.sizes.push(count);
    for (let i = 0; i < count; i++) this.corners.push(corners[i] as number);
  }

  get faceCount(): number {
    return this.sizes.length;
  }

  /**
   * Triangles over the corners, and which face each belongs to. Faces that name corners which are not there are left
   * out, with a sentence.
   */
  triangles(positions: Float64Array, leftOut: string[]): { indices: Uint32Array; faces: Uint32Array } {
    const indices = new Uint32Array(this.triangleCount * 3);
    const faces = new Uint32Array(this.triangleCount);
    const [corners, sizes] = [this.corners.values(), this.sizes.values()];
    const cornerCount = positions.length / 3;
    let [from, triangle, missing] = [0, 0, 0];
    const put = (face: number, a: number, b: number, c: number) => {
      indices[triangle * 3] = a;
      indices[triangle * 3 + 1] = b;
      indices[triangle * 3 + 2] = c;
      faces[triangle++] = face;
    };
    for (let face = 0; face < sizes.length; face++) {
      const size = sizes[face] as number;
      const named = corners.subarray(from, from + size);
      from += size;
      if (named.some((corner) => corner >= cornerCount)) missing++;
      else if (size === 3) put(face, named[0] as number, named[1] as number, named[2] as number);
      else {
        const places = Array.from(named, (corner) => [0, 1, 2].map((k) => positions[corner * 3 + k] as number));
        const cut = polygonTriangles(places as [number, number, number][]);
        for (let i = 0; i < cut.length; i += 3)
          put(face, ...([0, 1, 2].map((k) => named[cut[i + k] as number] as number) as [number, number, number]));
      }
    }
    if (missing > 0) leftOut.push(`${counted(missing, 'face')} with corners that are not in the file left out`);
    return { indices: indices.slice(0, triangle * 3), faces: faces.slice(0, triangle) };
  }
}
