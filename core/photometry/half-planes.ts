import { add, scale } from '../geometry/vec.ts';
import { isMeasured, type MeasuredBeam } from './beam.ts';
import { planeAt } from './distribution.ts';
import { axesOf, type Emitter, spotIntensityPerLumen } from './emitter.ts';

/**
 * Half of a plane through a lamp's axis, as dressed, cut into stretches over which the intensity runs without a jump and
 * rises before it falls. Angles are in radians off the axis; intensities in candela per lumen.
 */
export interface HalfPlane {
  /** Ascending from 0; stretch `i` runs from edge `i` to edge `i + 1`. Beyond the last edge all is dark. */
  readonly edges: readonly number[];
  /** Within a stretch. At its ends: what the intensity comes to from within. */
  at(stretch: number, angle: number): number;
  /** Angle of the highest intensity within a stretch. */
  topOf(stretch: number): number;
}

/** The half planes that stand for a beam. */
export interface HalfPlanes {
  /** In the beam's own coordinates, so that turning the lamp changes nothing: one of a round beam, a file's own ones. */
  readonly roundRadians: readonly number[];
  /** Share of the circle that each stands for; 1 in all. */
  readonly shares: readonly number[];
  /** The half plane at any angle, in the beam's own coordinates. */
  at(roundRadians: number): HalfPlane;
}

const pose = { position: [0, 0, 0], axis: [0, 0, -1] } as const;
const { first, second } = axesOf(pose);
/** Edges nearer than this are one: far below the least step of a file's angles. */
const sameEdge = 1e-9;

/** Edges up to the snoot's, 90 degrees among them, where what cloth spreads ends. */
const edgesOf = ({ front }: Emitter, own: readonly number[]): number[] => {
  const limit = Math.acos(front?.cosSnoot ?? -1);
  const all = [...own, 0, Math.PI / 2, Math.PI].filter((edge) => edge < limit - sameEdge);
  const sorted = [...all, limit].sort((a, b) => a - b);
  return sorted.filter((edge, i) => i === 0 || edge - (sorted[i - 1] as number) > sameEdge);
};

/** Lobes, floods, globes and tubes only fall from the axis to 90 degrees, and on from there wherever they still shine. */
const falling = (emitter: Emitter): HalfPlanes => {
  const edges = edgesOf(emitter, []);
  const at = (round: number): HalfPlane => {
    const across = add(scale(first, Math.cos(round)), scale(second, -Math.sin(round)));
    return {
      edges,
      at: (_, angle) => {
        const direction = add(scale(pose.axis, Math.cos(angle)), scale(across, Math.sin(angle)));
        return spotIntensityPerLumen(emitter, pose, direction, null);
      },
      topOf: (stretch) => edges[stretch] as number,
    };
  };
  const isTube = emitter.shape === 'tube';
  return isTube ? { roundRadians: [0, Math.PI / 2], shares: [0.5, 0.5], at } : { roundRadians: [0], shares: [1], at };
};

const measured = (emitter: Emitter, { distribution, perLumen }: MeasuredBeam): HalfPlanes => {
  const { verticalRadians: verticals, horizontalRadians: horizontals } = distribution;
  const spread = emitter.front?.spreadShare ?? 0;
  const edges = edgesOf(emitter, [...verticals]);
  let cell = -1;
  // the file's interval that each stretch lies in; -1 outside the measured range, which is dark
  const cells = edges.slice(1).map((end, i) => {
    const middle = ((edges[i] as number) + end) / 2;
    while (cell + 1 < verticals.length && (verticals[cell + 1] as number) <= middle) cell++;
    return cell + 1 < verticals.length ? cell : -1;
  });
  const at = (round: number): HalfPlane => {
    const candela = planeAt(distribution, round);
    const slopeIn = (k: number): number =>
      (perLumen * ((candela[k + 1] as number) - (candela[k] as number))) /
      ((verticals[k + 1] as number) - (verticals[k] as number));
    const intensity = (stretch: number, angle: number): number => {
      const k = cells[stretch] as number;
      const bare = k < 0 ? 0 : perLumen * (candela[k] as number) + slopeIn(k) * (angle - (verticals[k] as number));
      return spread > 0 ? bare + spread * (Math.max(Math.cos(angle), 0) / Math.PI - bare) : bare;
    };
    const topOf = (stretch: number): number => {
      const [from, to] = [edges[stretch] as number, edges[stretch + 1] as number];
      const k = cells[stretch] as number;
      const higherEnd = intensity(stretch, to) > intensity(stretch, from) ? to : from;
      if (spread === 0 || k < 0 || from >= Math.PI / 2) return higherEnd;
      // a rising line and the cosine of the cloth are highest where their slopes cancel
      const top = Math.asin(Math.min(Math.max(((1 - spread) * slopeIn(k) * Math.PI) / spread, 0), 1));
      return top > from && top < to ? top : higherEnd;
    };
    return { edges, at: intensity, topOf };
  };
  const planes = horizontals.length - 1;
  const roundRadians = [...horizontals.subarray(0, planes)];
  const shares = roundRadians.map((_, p) => {
    const before = p > 0 ? (horizontals[p - 1] as number) : (horizontals[planes - 1] as number) - 2 * Math.PI;
    return ((horizontals[p + 1] as number) - before) / (4 * Math.PI);
  });
  return { roundRadians, shares, at };
};

/** Half planes of a lamp as dressed. */
export const halfPlanesOf = (emitter: Emitter): HalfPlanes => {
  const { shape, beam } = emitter;
  const isRound = shape === 'sphere' || shape === 'tube';
  return !isRound && isMeasured(beam) ? measured(emitter, beam) : falling(emitter);
};
