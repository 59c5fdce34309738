import { isMeasured } from '../../../core/photometry/beam.ts';
import { beamWidth } from '../../../core/photometry/beam-angle.ts';
import type { Emitter } from '../../../core/photometry/emitter.ts';
import { halfPeakAngle } from '../../../core/photometry/half-peak-angle.ts';
import { type HalfPlane as CoreHalfPlane, halfPlanesOf } from '../../../core/photometry/half-planes.ts';
import { degreesFromRadians } from '../../../core/units/angle.ts';

/** Half of a plane through a lamp's axis. */
export interface HalfPlane {
  /** Candela per lumen, one for each angle of the curve. */
  readonly perLumen: readonly number[];
  /** Where it falls through half the peak; 180 when it never does, null when it is never that bright in front. */
  readonly halfDegrees: number | null;
}

/** A plane through the axis: its half planes to one side and to the other. */
export type BeamPlane = readonly [HalfPlane, HalfPlane];

/** A lamp's intensity against the angle off its axis. */
export interface BeamCurve {
  /** Rising from 0 to 180; both sides of a jump have the same angle. */
  readonly offAxisDegrees: readonly number[];
  /** One plane where all are alike; else two, square to each other: 0-180 and 90-270. */
  readonly planes: readonly BeamPlane[];
  /** Over all planes, those between the drawn ones too. */
  readonly peakPerLumen: number;
  /** Between the halves, on the mean over all planes; null when the lamp is nowhere that bright in front. */
  readonly fullDegrees: number | null;
}

const steps = 180;

/** A place on the curve: a stretch of the half planes, and an angle within it or at its end. */
interface Place {
  readonly stretch: number;
  readonly angle: number;
}

/** Both ends of each stretch, and angles between that lie close together near the axis. Beyond the last edge all is dark. */
const placesOn = (edges: readonly number[], hardEdges: readonly number[]): Place[] => {
  const grid = Array.from({ length: steps + 1 }, (_, i) => Math.PI * (i / steps) ** 2).concat(hardEdges);
  grid.sort((a, b) => a - b);
  let next = 0;
  return edges.slice(1).flatMap((to, stretch): Place[] => {
    const from = edges[stretch] as number;
    const within: number[] = [];
    for (; next < grid.length && (grid[next] as number) < to; next++)
      if ((grid[next] as number) > from) within.push(grid[next] as number);
    return [from, ...within, to].map((angle) => ({ stretch, angle }));
  });
};

/** To either side of the edge of an even cone. */
const sharp = 1e-8;

/** Reads a lamp's beam off its emitter, as dressed. Planes of measured beams are those of the file, whatever its turn. */
export const beamCurve = (emitter: Emitter): BeamCurve => {
  const { beam, shape } = emitter;
  const { peakPerLumen, fullRadians } = beamWidth(emitter);
  const { roundRadians, at } = halfPlanesOf(emitter);
  const isRound = roundRadians.length === 1;
  const hasCone = !isMeasured(beam) && shape !== 'sphere' && shape !== 'tube';
  const cone = hasCone ? [Math.acos(beam.cosSpill) - sharp, Math.acos(beam.cosSpill) + sharp] : [];
  const places = placesOn(at(0).edges, cone);
  const dark = Math.max(...places.map(({ angle }) => angle)) < Math.PI - sharp;
  const read = (plane: CoreHalfPlane): HalfPlane => {
    const perLumen = places.map(({ stretch, angle }) => plane.at(stretch, angle));
    const half = peakPerLumen > 0 ? halfPeakAngle(plane, peakPerLumen) : null;
    return {
      perLumen: dark ? [...perLumen, 0, 0] : perLumen,
      halfDegrees: half === null ? null : degreesFromRadians(half),
    };
  };
  const angles = places.map(({ angle }) => degreesFromRadians(angle));
  const pair = (quarter: number): BeamPlane => [
    read(at((quarter * Math.PI) / 2)),
    read(at(((quarter + 2) * Math.PI) / 2)),
  ];
  return {
    offAxisDegrees: dark ? [...angles, angles.at(-1) as number, 180] : angles,
    planes: isRound ? [pair(0)] : [pair(0), pair(1)],
    peakPerLumen,
    fullDegrees: fullRadians === null ? null : degreesFromRadians(fullRadians),
  };
};
