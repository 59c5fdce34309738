import { candelaAt, type Distribution } from './distribution.ts';

/**
 * Intensity distribution of a lamp per lumen, round its axis: a lobe cos^n (hot spot) that carries `1 - spillShare` of
 * the flux and a cone (spill) that carries the rest: even inside, falling in a straight line (in the cosine) to nothing at
 * its edge.
 */
export interface LobeBeam {
  /** Exponent n of the hot spot; 1 is Lambertian. */
  readonly exponent: number;
  /** Cosine of the half angle where the spill ends; -1 for a spill all round. */
  readonly cosSpill: number;
  /** Cosine of the half angle up to which the spill is even; equal to `cosSpill` for a hard edge. */
  readonly cosSpillEven: number;
  /** Share of the flux in the spill cone, 0 to 1. 1 is a plain uniform cone. */
  readonly spillShare: number;
}

/** A beam read from a photometric file, turned about its axis. Vertical angle 0 is the axis. */
export interface MeasuredBeam {
  readonly distribution: Distribution;
  /** One over the flux of the distribution in lumens. */
  readonly perLumen: number;
  /** Highest intensity per lumen. */
  readonly peakPerLumen: number;
  /** Counter-clockwise seen from behind the lamp. */
  readonly turnRadians: number;
  /** Stands for the distribution in keys of layers, instead of its numbers. */
  toJSON(): string;
}

export type Beam = LobeBeam | MeasuredBeam;

/** A flat panel: cos distribution. */
export const lambertianBeam: LobeBeam = { exponent: 1, cosSpill: 0, cosSpillEven: 0, spillShare: 0 };

/** The same in all directions. */
export const evenBeam: LobeBeam = { exponent: 1, cosSpill: -1, cosSpillEven: -1, spillShare: 1 };

export const isMeasured = (beam: Beam): beam is MeasuredBeam => 'distribution' in beam;

/** Exponent n for which cos^n falls to one half at the given half angle in radians: ln 0.5 / ln cos (checkvalues.md 1.1f). */
export const exponentFromHalfPeak = (halfAngleRadians: number): number =>
  Math.log(0.5) / Math.log(Math.cos(halfAngleRadians));

/** Share of the half angle of a spill that is even; the rest is its soft edge (our choice; no published source). */
export const evenShareOfSpill = 0.75;

/** Solid angle in steradians of a cone given by the cosine of its half angle: 2 pi (1 - cos). */
export const coneSolidAngle = (cosHalfAngle: number): number => 2 * Math.PI * (1 - cosHalfAngle);

/** Peak of the cos^n lobe per lumen: (n + 1) / 2 pi (checkvalues.md 1.1e), in candela per lumen. */
export const lobePeakPerLumen = (exponent: number): number => (exponent + 1) / (2 * Math.PI);

/** Level of the even part of the spill: its share of the flux over the mean solid angle of its even and outer cones. */
export const spillLevelPerLumen = ({ spillShare, cosSpill, cosSpillEven }: LobeBeam): number =>
  spillShare === 0 ? 0 : (2 * spillShare) / (coneSolidAngle(cosSpill) + coneSolidAngle(cosSpillEven));

/**
 * Intensity in candela per lumen at an angle off the axis.
 *
 * @param cosAngle cosine of the angle between the axis and the direction of emission
 * @param roundRadians angle round the axis, counter-clockwise seen from behind the lamp; only measured beams ask
 */
export const intensityPerLumen = (beam: Beam, cosAngle: number, roundRadians = 0): number => {
  if (isMeasured(beam)) {
    const vertical = Math.acos(Math.min(Math.max(cosAngle, -1), 1));
    return beam.perLumen * candelaAt(beam.distribution, vertical, roundRadians - beam.turnRadians);
  }
  const { exponent, cosSpill, cosSpillEven } = beam;
  const lobe = cosAngle > 0 ? (1 - beam.spillShare) * lobePeakPerLumen(exponent) * cosAngle ** exponent : 0;
  if (cosAngle < cosSpill) return lobe;
  const edge = cosAngle >= cosSpillEven ? 1 : (cosAngle - cosSpill) / (cosSpillEven - cosSpill);
  return lobe + spillLevelPerLumen(beam) * edge;
};

/** Highest intensity of a beam per lumen. */
export const beamPeakPerLumen = (beam: Beam): number =>
  isMeasured(beam) ? beam.peakPerLumen : intensityPerLumen(beam, 1);

/** Peak intensity in candela behind a printed beam distance: 0.25 lx x d^2 (ANSI/PLATO FL 1-2019). */
export const peakFromBeamDistance = (distanceMetres: number): number => 0.25 * distanceMetres ** 2;

/** Printed beam distance in metres of a lamp: 2 sqrt(I) (ANSI/PLATO FL 1-2019). */
export const beamDistanceFromPeak = (intensityCandela: number): number => 2 * Math.sqrt(intensityCandela);
