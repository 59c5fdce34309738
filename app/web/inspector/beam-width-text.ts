import type { BeamCurve, BeamPlane } from './beam-curve.ts';

/** A beam's angle in words: narrow ones to a tenth of a degree. */
export const beamDegreesText = (degrees: number): string =>
  degrees > 359 ? 'all round' : `${degrees.toFixed(degrees < 9.95 ? 1 : 0)}°`;

const planeText = ([one, other]: BeamPlane): string =>
  one.halfDegrees === null || other.halfDegrees === null
    ? 'uneven'
    : beamDegreesText(one.halfDegrees + other.halfDegrees);

/**
 * How wide a beam is: one angle where all its planes are alike, else the mean over all planes, then the drawn ones.
 *
 * @param names of the drawn planes
 */
export const beamWidthText = ({ planes, fullDegrees }: BeamCurve, names: readonly string[]): string => {
  const widths = planes.map(planeText);
  const mean = fullDegrees === null ? 'uneven' : beamDegreesText(fullDegrees);
  if (widths.every((width) => width === mean)) return mean;
  const each = widths.map((width, i) => `${width} ${names[i]}`).join(', ');
  // a lamp that shines behind itself in some planes has no width that a mean could tell
  return fullDegrees === null || fullDegrees > 180 ? each : `${mean} on the mean: ${each}`;
};
