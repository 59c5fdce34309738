import type { Mesh } from '../mesh.ts';
import { seededRandom } from '../random.ts';
import type { Vec3 } from '../vec.ts';
import { smoothstep } from './sheet.ts';
import { type AddTriangle, addChip, addPebble, addStone, addTuft } from './strewn-things.ts';

/** What is strewn. Lengths in metres. */
export interface StrewnShape {
  readonly kind: 'stones' | 'pebbles' | 'tufts' | 'gravel';
  readonly count: number;
  /** So many of the largest are drawn more richly, if they are pebbles or gravel. */
  readonly largeCount: number;
  /** Smallest and largest. */
  readonly heightMetres: readonly [low: number, high: number];
  readonly radiusMetres: number;
  readonly seed: number;
}

/** Collects triangles, each thing scaled, turned about the vertical and moved. */
class Strew {
  private readonly positions: number[] = [];
  private readonly normals: number[] = [];

  /** Takes triangles of a thing one metre high about its foot. */
  placing(at: Vec3, factor: number, turn: number): AddTriangle {
    const [c, s] = [Math.cos(turn), Math.sin(turn)];
    const { positions, normals } = this;
    const put = ([x, y, z]: Vec3) =>
      positions.push(at[0] + factor * (x * c + z * s), at[1] + factor * y, at[2] + factor * (z * c - x * s));
    const face = ([x, y, z]: Vec3) => normals.push(x * c + z * s, y, z * c - x * s);
    return (a, b, d, na, nb, nd) => {
      put(a);
      put(b);
      put(d);
      face(na);
      face(nb);
      face(nd);
    };
  }

  build(): Mesh {
    return { positions: Float64Array.from(this.positions), normals: Float64Array.from(this.normals) };
  }
}

/** Where things begin to thin out, so that no circle shows, as a share of the radius. */
export const thinsFrom = 0.6;

/** Distance from the middle of one thing of many, 0 to 1: evenly over the inner circle, ever fewer toward the rim. */
const distanceShare = (random: () => number): number => {
  for (;;) {
    const share = Math.sqrt(random());
    if (random() >= smoothstep(thinsFrom, 1, share)) return share;
  }
};

/**
 * Things strewn evenly over a circle, fewer toward its rim, each with its own size, shape and turn; small ones are commoner than large ones.
 * The same seed gives the same ground. Stones and pebbles lie a fifth in the ground.
 *
 * @returns corners [x, up, z], metres, about the middle of the circle
 */
export const strewnMesh = ({ kind, count, largeCount, heightMetres, radiusMetres, seed }: StrewnShape): Mesh => {
  const random = seededRandom(seed);
  const [low, high] = heightMetres;
  const smallness = kind === 'tufts' ? 1.5 : 2.2;
  const strew = new Strew();
  for (let n = 0; n < count; n++) {
    const away = radiusMetres * distanceShare(random);
    const turn = 2 * Math.PI * random();
    // one size of each of as many steps as there are things, the largest first: so the share of large ones is known
    const size = low * (high / low) ** (((count - n - random()) / count) ** smallness);
    const add = strew.placing([away * Math.cos(turn), 0, away * Math.sin(turn)], size, 2 * Math.PI * random());
    const isLarge = n < largeCount;
    if (kind === 'stones' || (kind === 'gravel' && isLarge)) addStone(random, add);
    else if (kind === 'gravel') addChip(random, add);
    else if (kind === 'pebbles') addPebble(random, add, isLarge);
    else addTuft(random, add);
  }
  return strew.build();
};
