/** What a triangle costs against a look at two boxes, in looks; common practice. */
const triangleCost = 1.25;

/** So few triangles are not split any more. */
const smallLeaf = 4;

/** Most bins along an axis; a plane is tried between any two. */
const mostBins = 32;

/** Six numbers of a box in a row: low x, y, z, high x, y, z. */
const nothing = new Float64Array([1, 1, 1, -1, -1, -1].map((sign) => sign * Number.POSITIVE_INFINITY));

/** Makes the box at `to` hold that at `from` too. */
const grow = (boxes: Float64Array, to: number, from: Float64Array, at: number): void => {
  for (let i = 0; i < 3; i++) {
    const low = from[at + i] as number;
    const high = from[at + 3 + i] as number;
    if (low < (boxes[to + i] as number)) boxes[to + i] = low;
    if (high > (boxes[to + 3 + i] as number)) boxes[to + 3 + i] = high;
  }
};

/** Half the surface of a box. */
const halfArea = (box: Float64Array): number => {
  const x = (box[3] as number) - (box[0] as number);
  const y = (box[4] as number) - (box[1] as number);
  const z = (box[5] as number) - (box[2] as number);
  return x * y + y * z + z * x;
};

/**
 * Splits runs of triangles by the surface area heuristic (MacDonald and Booth 1990), with planes between bins of their
 * middles (Wald 2007): of all planes the one that makes rays cheapest, if any makes them cheaper than a leaf does.
 */
export class TriangleSplitter {
  /** Triangles in the order that the splits have brought them into. */
  readonly order: Uint32Array;
  /** Six numbers a triangle, and the sum of low and high, three numbers a triangle: twice its middle. */
  private readonly boxes: Float64Array;
  private readonly middles: Float64Array;
  /** Which bin each triangle of the present run is in, along the axis that was last looked at. */
  private readonly binOf: Uint8Array;
  private readonly bestBinOf: Uint8Array;
  private readonly counts = new Uint32Array(mostBins);
  private readonly bins = new Float64Array(mostBins * 6);
  /** Half the surface of what lies after each bin. */
  private readonly after = new Float64Array(mostBins);
  private readonly grown = new Float64Array(6);

  /** @param corners nine numbers a triangle, metres */
  constructor(corners: Float32Array) {
    const triangles = corners.length / 9;
    this.order = new Uint32Array(triangles);
    this.boxes = new Float64Array(triangles * 6);
    this.middles = new Float64Array(triangles * 3);
    this.binOf = new Uint8Array(triangles);
    this.bestBinOf = new Uint8Array(triangles);
    for (let t = 0; t < triangles; t++) {
      this.order[t] = t;
      for (let axis = 0; axis < 3; axis++) {
        const c = t * 9 + axis;
        const [a, b, d] = [corners[c] as number, corners[c + 3] as number, corners[c + 6] as number];
        const [low, high] = [Math.min(a, b, d), Math.max(a, b, d)];
        this.boxes[t * 6 + axis] = low;
        this.boxes[t * 6 + 3 + axis] = high;
        this.middles[t * 3 + axis] = low + high;
      }
    }
  }

  /**
   * Brings the run [from, to) into two halves.
   *
   * @returns where the second half begins; null where the run is best left whole
   */
  split(from: number, to: number): number | null {
    const count = to - from;
    if (count <= smallLeaf) return null;
    const { order, binOf, bestBinOf } = this;
    let [lastBin, leastCost] = [-1, triangleCost * count];
    for (let axis = 0; axis < 3; axis++) {
      const bins = this.fillBins(from, to, axis);
      if (bins < 2) continue;
      const { bin, cost } = this.cheapestPlane(count, bins);
      if (cost >= leastCost) continue;
      [lastBin, leastCost] = [bin, cost];
      bestBinOf.set(binOf.subarray(from, to), from);
    }
    if (lastBin < 0) return null;
    let middle = from;
    for (let i = from; i < to; i++) {
      if ((bestBinOf[i] as number) > lastBin) continue;
      const triangle = order[i] as number;
      order[i] = order[middle] as number;
      order[middle] = triangle;
      // what was in the way has been looked at: it belongs to the second half
      middle++;
    }
    return middle;
  }

  /** Sorts a run into bins along an axis; how many bins, 0 where all middles are the same. */
  private fillBins(from: number, to: number, axis: number): number {
    const { order, middles, binOf, boxes, counts, bins } = this;
    let low = Number.POSITIVE_INFINITY;
    let high = Number.NEGATIVE_INFINITY;
    for (let i = from; i < to; i++) {
      const middle = middles[(order[i] as number) * 3 + axis] as number;
      if (middle < low) low = middle;
      if (middle > high) high = middle;
    }
    const many = Math.min(mostBins, to - from);
    const perMetre = many / (high - low);
    if (!(high > low) || !Number.isFinite(perMetre)) return 0;
    for (let bin = 0; bin < many; bin++) counts[bin] = 0;
    for (let i = 0; i < many * 6; i++) bins[i] = nothing[i % 6] as number;
    for (let i = from; i < to; i++) {
      const triangle = order[i] as number;
      const bin = Math.min((((middles[triangle * 3 + axis] as number) - low) * perMetre) | 0, many - 1);
      binOf[i] = bin;
      (counts[bin] as number)++;
      grow(bins, bin * 6, boxes, triangle * 6);
    }
    return many;
  }

  /** The plane after which bin is cheapest, and what a ray costs with it, in looks. */
  private cheapestPlane(count: number, many: number): { bin: number; cost: number } {
    const { bins, counts, after, grown } = this;
    grown.set(nothing);
    for (let bin = many - 1; bin > 0; bin--) {
      grow(grown, 0, bins, bin * 6);
      after[bin - 1] = halfArea(grown);
    }
    grow(grown, 0, bins, 0);
    const whole = halfArea(grown);
    grown.set(nothing);
    let bin = 0;
    let least = Number.POSITIVE_INFINITY;
    let before = 0;
    for (let b = 0; b < many - 1; b++) {
      if (counts[b] === 0) continue;
      before += counts[b] as number;
      grow(grown, 0, bins, b * 6);
      const surface = halfArea(grown) * before + (after[b] as number) * (count - before);
      if (surface < least) {
        bin = b;
        least = surface;
      }
    }
    return { bin, cost: 1 + (triangleCost * least) / whole };
  }
}
