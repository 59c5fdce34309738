import type { BeamCurve, BeamPlane } from './beam-curve.ts';

/** Radius of the outer ring, in the plot's own units; it stands for the peak. */
export const plotRadius = 84;

const radians = (degrees: number) => (degrees * Math.PI) / 180;

/** A place on the plot: the axis points down, angles to the right are positive. */
const at = (degrees: number, radius: number): string =>
  `${(radius * Math.sin(radians(degrees))).toFixed(1)} ${(radius * Math.cos(radians(degrees))).toFixed(1)}`;

/** A line from the lamp outward. */
export const spoke = (degrees: number, radius: number): string => `M0 0L${at(degrees, radius)}`;

/** A ring, up to an angle off the axis on either side: 90 is half of it, 180 all. */
export const ringPath = (radius: number, lastDegrees: number): string => {
  const way = `A${radius} ${radius} 0 0 `;
  return `M${at(-lastDegrees, radius)}${way}0 ${at(0, radius)}${way}0 ${at(lastDegrees, radius)}`;
};

/** The curve of a plane, from its far end on one side through the axis to the other. */
export const planePath = (
  { offAxisDegrees, peakPerLumen }: BeamCurve,
  plane: BeamPlane,
  lastDegrees: number,
): string => {
  if (peakPerLumen === 0) return '';
  const [one, other] = plane.map(({ perLumen }, side) =>
    offAxisDegrees.flatMap((degrees, i) =>
      degrees > lastDegrees
        ? []
        : [at(side === 0 ? degrees : -degrees, (plotRadius * (perLumen[i] as number)) / peakPerLumen)],
    ),
  ) as [string[], string[]];
  return `M${[...other.reverse(), ...one].join('L')}`;
};
