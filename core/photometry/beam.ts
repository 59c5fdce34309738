/**
 * Intensity distribution of a lamp per lumen, round its axis: a lobe cos^n (hot spot) that carries `1 - spillShare` of
 * the flux and a cone (spill) that carries the rest: even inside, falling in a straight line (in the cosine) to nothing at
 * its edge.
 */
export interface Beam {
  /** Exponent n of the hot spot; 1 is Lambertian. */
  readonly exponent: number;
  /** Cosine of the half angle where the spill ends. */
  readonly cosSpill: number;
  /** Cosine of the half angle up to which the spill is even; equal to `cosSpill` for a hard edge. */
  readonly cosSpillEven: number;
  /** Share of the flux in the spill cone, 0 to 1. 1 is a plain uniform cone. */
  readonly spillShare: number;
}

/** A flat panel: cos distribution. */
export const lambertianBeam: Beam = { exponent: 1, cosSpill: 0, cosSpillEven: 0, spillShare: 0 };

/** Exponent n for which cos^n falls to one half at the given half angle in radians: ln 0.5 / ln cos (checkvalues.md 1.1f). */
export const exponentFromHalfPeak = (halfAngleRadians: number): number =>
  Math.log(0.5) / Math.log(Math.cos(halfAngleRadians));

/** Solid angle in steradians of a cone given by the cosine of its half angle: 2 pi (1 - cos). */
export const coneSolidAngle = (cosHalfAngle: number): number => 2 * Math.PI * (1 - cosHalfAngle);

/** Peak of the cos^n lobe per lumen: (n + 1) / 2 pi (checkvalues.md 1.1e), in candela per lumen. */
export const lobePeakPerLumen = (exponent: number): number => (exponent + 1) / (2 * Math.PI);

/**
 * Intensity in candela per lumen at an angle off the axis. Zero behind the lamp.
 *
 * @param cosAngle cosine of the angle between the axis and the direction of emission
 */
export const intensityPerLumen = (beam: Beam, cosAngle: number): number => {
  if (cosAngle <= 0) return 0;
  const lobe = (1 - beam.spillShare) * lobePeakPerLumen(beam.exponent) * cosAngle ** beam.exponent;
  return lobe + spillPerLumen(beam, cosAngle);
};

/** The spill's part: its even level is its share of the flux over the mean solid angle of its even and outer cones. */
const spillPerLumen = ({ spillShare, cosSpill, cosSpillEven }: Beam, cosAngle: number): number => {
  if (spillShare === 0 || cosAngle < cosSpill) return 0;
  const level = (2 * spillShare) / (coneSolidAngle(cosSpill) + coneSolidAngle(cosSpillEven));
  return cosAngle >= cosSpillEven ? level : (level * (cosAngle - cosSpill)) / (cosSpillEven - cosSpill);
};

/** Peak intensity in candela behind a printed beam distance: 0.25 lx x d^2 (ANSI/PLATO FL 1-2019). */
export const peakFromBeamDistance = (distanceMetres: number): number => 0.25 * distanceMetres ** 2;

/** Printed beam distance in metres of a lamp: 2 sqrt(I) (ANSI/PLATO FL 1-2019). */
export const beamDistanceFromPeak = (intensityCandela: number): number => 2 * Math.sqrt(intensityCandela);
