type Point = readonly [number, number];

/** Least distance between parts of an outline, metres: finer ones could not be told from rounding. */
export const leastGap = 1e-4;

/** The least gap along both axes at once: along a slant, two near points lie no farther apart than that. */
const slantGap = 2 * leastGap;

/** Where something begins and ends along each axis and along both slants, u + v and u - v. */
interface Bounds {
  readonly low: readonly number[];
  readonly high: readonly number[];
}

/** A stretch from one point of a line to the next. */
export interface Edge extends Bounds {
  readonly from: Point;
  readonly to: Point;
  /** Its place on the line. */
  readonly index: number;
  readonly length: number;
}

/** The edges of a line, and the bounds of all of them. */
export interface Rim extends Bounds {
  readonly edges: readonly Edge[];
}

const ways = [0, 1, 2, 3] as const;
const along = ([u, v]: Point): readonly number[] => [u, v, u + v, u - v];

const boundsOf = (all: readonly (readonly number[])[]): Bounds => ({
  low: ways.map((way) => all.reduce((least, each) => Math.min(least, each[way] as number), Number.POSITIVE_INFINITY)),
  high: ways.map((way) => all.reduce((most, each) => Math.max(most, each[way] as number), Number.NEGATIVE_INFINITY)),
});

export const rimOf = (points: readonly Point[], isClosed: boolean): Rim => {
  const last = isClosed ? points.length : points.length - 1;
  const edges = points.slice(0, last).map((from, index): Edge => {
    const to = points[(index + 1) % points.length] as Point;
    return {
      from,
      to,
      index,
      length: Math.hypot(to[0] - from[0], to[1] - from[1]),
      ...boundsOf([along(from), along(to)]),
    };
  });
  return { edges, ...boundsOf(points.map(along)) };
};

/** Whether two things may come nearer to each other than the least gap; false only where they do not. */
export const mayBeNear = (a: Bounds, b: Bounds): boolean => {
  for (const way of ways) {
    if ((a.low[way] as number) > (b.high[way] as number) + slantGap) return false;
    if ((b.low[way] as number) > (a.high[way] as number) + slantGap) return false;
  }
  return true;
};

/** The way along which edges are shortest for the room they take together. */
const bestWay = (edges: readonly Edge[], rim: Rim): number => {
  const shares = ways.map((way) => {
    const room = (rim.high[way] as number) - (rim.low[way] as number);
    const all = edges.reduce((sum, { low, high }) => sum + (high[way] as number) - (low[way] as number), 0);
    return room > 0 ? all / room : Number.POSITIVE_INFINITY;
  });
  return shares.indexOf(Math.min(...shares));
};

/**
 * Whether something holds of an edge of one line and an edge of another. It is asked only where both may be near each
 * other, and most pairs are never looked at: a file may hold millions of them.
 */
export const somePair = (one: Rim, two: Rim, holds: (a: Edge, b: Edge) => boolean): boolean => {
  if (!mayBeNear(one, two)) return false;
  const way = bestWay(two.edges, two);
  const others = two.edges.filter((edge) => mayBeNear(edge, one));
  others.sort((a, b) => (a.low[way] as number) - (b.low[way] as number));
  const lows = others.map(({ low }) => low[way] as number);
  const longest = others.reduce(
    (most, { low, high }) => Math.max(most, (high[way] as number) - (low[way] as number)),
    0,
  );
  for (const edge of one.edges) {
    if (!mayBeNear(edge, two)) continue;
    const [from, to] = [(edge.low[way] as number) - longest - slantGap, (edge.high[way] as number) + slantGap];
    for (let k = firstFrom(lows, from); k < others.length && (lows[k] as number) <= to; k++) {
      const other = others[k] as Edge;
      if (mayBeNear(edge, other) && holds(edge, other)) return true;
    }
  }
  return false;
};

/** Index of the first of rising numbers that is not less than one. */
const firstFrom = (rising: readonly number[], least: number): number => {
  let [low, high] = [0, rising.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((rising[middle] as number) < least) low = middle + 1;
    else high = middle;
  }
  return low;
};
