import type { ScanUnit, UpAxis } from './place-scan.ts';
import type { RawMesh, ScanKind } from './scanned-mesh.ts';

/** What a file's units and axes are, or may be. */
export interface PlacingGuess {
  readonly unit: ScanUnit;
  readonly upAxis: UpAxis;
  /** Whether the file doesn't say. */
  readonly isGuess: boolean;
  /** A sentence without its full stop that says where this comes from. */
  readonly words: string;
}

/** Largest side of the box, and the sum of all triangles' normals times their areas over the sum of the areas. */
const shapeOf = ({ positions, indices }: RawMesh) => {
  const [low, high, sum] = [new Float64Array(3).fill(Infinity), new Float64Array(3).fill(-Infinity), [0, 0, 0]];
  for (let i = 0; i < positions.length; i++) {
    low[i % 3] = Math.min(low[i % 3] as number, positions[i] as number);
    high[i % 3] = Math.max(high[i % 3] as number, positions[i] as number);
  }
  let area = 0;
  for (let t = 0; t < indices.length; t += 3) {
    const at = (c: number, k: number) => positions[(indices[t + c] as number) * 3 + k] as number;
    const edge = (c: number, k: number) => at(c, k) - at(0, k);
    const cross = [1, 2, 0].map((i, k) => edge(1, i) * edge(2, (k + 2) % 3) - edge(1, (k + 2) % 3) * edge(2, i));
    area += Math.hypot(...cross);
    cross.forEach((value, k) => {
      sum[k] = (sum[k] as number) + value;
    });
  }
  return {
    longest: Math.max(...[0, 1, 2].map((k) => (high[k] as number) - (low[k] as number))),
    facing: sum.map((v) => v / area),
  };
};

/** A scan lacks its underside, so on the whole it faces up; one that faces nowhere is closed and does not tell. */
const leastFacing = 0.15;
const axes = ['x', 'y', 'z'] as const;

const guessUp = (facing: readonly number[]): UpAxis | null => {
  const most = facing.reduce((at, value, k) => (Math.abs(value) > Math.abs(facing[at] as number) ? k : at), 0);
  const share = facing[most] as number;
  if (!(Math.abs(share) > leastFacing)) return null;
  return share > 0 ? (axes[most] as UpAxis) : `-${axes[most] as 'x' | 'y' | 'z'}`;
};

/** Sizes up to which a number is taken for metres, and for centimetres. Common practice, no published source. */
const [mostMetres, mostCentimetres] = [150, 15_000];

/**
 * Units and up axis of a scan. glTF says both (metres, y up: glTF 2.0, section 3.4). OBJ and PLY say neither: units are
 * guessed from the size, up from where the surface faces on the whole.
 */
export const guessUnitAndUp = (mesh: RawMesh, kind: ScanKind): PlacingGuess => {
  if (kind === 'gltf')
    return { unit: 'm', upAxis: 'y', isGuess: false, words: 'Files of this kind are in metres, with y up' };
  const { longest, facing } = shapeOf(mesh);
  const unit = longest <= mostMetres ? 'm' : longest <= mostCentimetres ? 'cm' : 'mm';
  const up = guessUp(facing);
  return {
    unit,
    upAxis: up ?? 'y',
    isGuess: true,
    words: `The file doesn’t say; its unit is guessed from its size${up ? ', up from where it is open' : ''}`,
  };
};
