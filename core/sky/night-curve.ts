import type { Span } from './night-spans.ts';

/** A smooth quantity over a stretch of time: known at points close enough that it turns at most once between three. */
export interface NightCurve {
  readonly value: (milliseconds: number) => number;
  readonly points: readonly CurvePoint[];
}
interface CurvePoint {
  readonly at: number;
  readonly value: number;
}

/** Where a curve goes through a level. */
export interface Crossing {
  readonly milliseconds: number;
  readonly rises: boolean;
}

/** Crossings are found to this, milliseconds: far under what the sky can be told to. */
const toleranceMilliseconds = 50;

/** Where the parabola through three points has its turn, or null where it is straight. */
const turnOf = (a: CurvePoint, b: CurvePoint, c: CurvePoint): number | null => {
  const [left, right] = [b.at - a.at, c.at - b.at];
  const [downLeft, downRight] = [b.value - a.value, b.value - c.value];
  const bend = right * downLeft + left * downRight;
  return bend === 0 ? null : b.at - (left * left * downRight - right * right * downLeft) / (2 * bend);
};

/** The turn beside a point that stands over or under both its neighbours, from parabolas of a shrinking step. */
const refinedTurn = (value: NightCurve['value'], a: CurvePoint, b: CurvePoint, c: CurvePoint): CurvePoint => {
  let middle = b;
  let step = Math.min(b.at - a.at, c.at - b.at);
  let around: readonly [CurvePoint, CurvePoint, CurvePoint] = [a, b, c];
  for (let pass = 0; pass < 3; pass++) {
    const turn = turnOf(...around);
    if (turn === null) return middle;
    const at = Math.min(c.at, Math.max(a.at, turn));
    middle = { at, value: value(at) };
    step /= 12;
    around = [{ at: at - step, value: value(at - step) }, middle, { at: at + step, value: value(at + step) }];
  }
  return middle;
};

/**
 * The curve of a quantity from start to end. Its turns between the points are found and kept as points, so that a
 * crossing and the crossing back are not lost even where they are seconds apart.
 *
 * @param pieces how many equal steps to look at, at least 2
 */
export const nightCurve = (
  value: NightCurve['value'],
  startMilliseconds: number,
  endMilliseconds: number,
  pieces: number,
): NightCurve => {
  const plain = Array.from({ length: pieces + 1 }, (_, i): CurvePoint => {
    const at = startMilliseconds + ((endMilliseconds - startMilliseconds) * i) / pieces;
    return { at, value: value(at) };
  });
  const points = plain.flatMap((b, i) => {
    const [a, c] = [plain[i - 1], plain[i + 1]];
    if (!a || !c || (b.value - a.value) * (c.value - b.value) > 0) return [b];
    const turn = refinedTurn(value, a, b, c);
    return turn.at < b.at ? [turn, b] : turn.at > b.at ? [b, turn] : [b];
  });
  return { value, points };
};

/** Where a sign changes between two points, by false position that halves a side which stays (the Illinois rule). */
const rootBetween = (excess: (at: number) => number, left: CurvePoint, right: CurvePoint): number => {
  let [a, fa, b, fb] = [left.at, left.value, right.at, right.value];
  for (let pass = 0; pass < 60 && b - a > toleranceMilliseconds; pass++) {
    const guess = a + ((b - a) * fa) / (fa - fb);
    const at = Math.min(b - toleranceMilliseconds / 4, Math.max(a + toleranceMilliseconds / 4, guess));
    const f = excess(at);
    if (f === 0) return at;
    if (f > 0 === fa > 0) {
      [a, fa] = [at, f];
      fb /= 2;
    } else {
      [b, fb] = [at, f];
      fa /= 2;
    }
  }
  return (a + b) / 2;
};

/** Every place where the curve goes through a level, in order. */
export const crossingsOf = ({ value, points }: NightCurve, level: number): readonly Crossing[] =>
  points.slice(1).flatMap((right, i) => {
    const left = points[i] as CurvePoint;
    if (left.value > level === right.value > level) return [];
    const excess = (at: number) => value(at) - level;
    const over = (point: CurvePoint) => ({ at: point.at, value: point.value - level });
    return [{ milliseconds: rootBetween(excess, over(left), over(right)), rises: right.value > level }];
  });

/** The stretches in which the curve is over a level; the ends of the curve cut them off. */
export const spansOver = (curve: NightCurve, level: number): readonly Span[] => {
  const [first, last] = [curve.points[0], curve.points.at(-1)] as [CurvePoint, CurvePoint];
  const edges = crossingsOf(curve, level).map(({ milliseconds }) => milliseconds);
  const ends = [...(first.value > level ? [first.at] : []), ...edges, ...(last.value > level ? [last.at] : [])];
  return Array.from({ length: Math.floor(ends.length / 2) }, (_, i) => ({
    startMilliseconds: ends[2 * i] as number,
    endMilliseconds: ends[2 * i + 1] as number,
  }));
};

/** The stretches in which the curve is under a level. */
export const spansUnder = ({ value, points }: NightCurve, level: number): readonly Span[] =>
  spansOver(
    { value: (at) => -value(at), points: points.map((point) => ({ at: point.at, value: -point.value })) },
    -level,
  );

/** When the curve is highest, milliseconds. */
export const highestOf = ({ points }: NightCurve): number =>
  points.reduce((best, next) => (next.value > best.value ? next : best)).at;
