import { MeshoptSimplifier } from 'meshoptimizer/simplifier';
import { inWords } from '../limits.ts';
import { ScanError } from '../scan-error.ts';
import type { RawMesh } from '../scanned-mesh.ts';
import { coloursOfTriangles, lightOfCorners } from './corner-colours.ts';

/** Positions from the first corner in single precision: scans far from their origin keep their fine shape. */
const nearPositions = (positions: Float64Array): Float32Array => {
  const near = new Float32Array(positions.length);
  for (let i = 0; i < near.length; i++) near[i] = (positions[i] as number) - (positions[i % 3] as number);
  return near;
};

/** Fewer triangles of much the same shape: first with its borders where they are, then with borders that follow, then roughly. */
const fewerTriangles = (indices: Uint32Array, positions: Float32Array, most: number): Uint32Array => {
  const target = most * 3;
  const [held] = MeshoptSimplifier.simplify(indices, positions, 3, target, 1, ['LockBorder']);
  if (held.length <= target) return held;
  const [free] = MeshoptSimplifier.simplify(held, positions, 3, target, 1, ['Prune']);
  if (free.length <= target) return free;
  const [rough] = MeshoptSimplifier.simplifySloppy(free, positions, 3, null, target, 1);
  return rough;
};

/**
 * Thins a mesh to at most so many triangles with meshoptimizer, which merges corners where it changes the shape least
 * (edge collapse by quadric errors, Garland and Heckbert 1997). Colours become the mean of what lay round the corners.
 *
 * @param leftOut takes a sentence that says so
 * @throws ScanError when it can't be thinned
 */
export const thinMesh = async (mesh: RawMesh, most: number, leftOut: string[]): Promise<RawMesh> => {
  const { positions, indices, colours } = mesh;
  if (indices.length <= most * 3) return mesh;
  if (!MeshoptSimplifier.supported)
    throw new ScanError(`It has ${inWords(indices.length / 3)} triangles, and this browser can't thin them`);
  await MeshoptSimplifier.ready;
  const fewer = fewerTriangles(indices, nearPositions(positions), most);
  if (fewer.length === 0) throw new ScanError('Nothing was left of it when it was thinned');
  leftOut.push(`${inWords(indices.length / 3)} triangles were thinned to ${inWords(fewer.length / 3)}`);
  const light = colours && lightOfCorners(colours, indices, positions.length / 3);
  return { positions, indices: fewer, colours: light && coloursOfTriangles(light, fewer) };
};
