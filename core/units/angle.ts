/** Radians from degrees. */
export const radiansFromDegrees = (degrees: number): number => (degrees * Math.PI) / 180;

/** Degrees from radians. */
export const degreesFromRadians = (radians: number): number => (radians * 180) / Math.PI;

/** The same bearing in [0, 360). */
export const wrapDegrees = (degrees: number): number => ((degrees % 360) + 360) % 360;

/** The same turn in [-180, 180). */
export const halfTurnDegrees = (degrees: number): number => wrapDegrees(degrees + 180) - 180;

/** The same turn in [-pi, pi]. */
export const halfTurnRadians = (radians: number): number => Math.atan2(Math.sin(radians), Math.cos(radians));

/** Angle between two bearings, 0 to 180. */
export const degreesApart = (a: number, b: number): number => {
  const turn = wrapDegrees(a - b);
  return Math.min(turn, 360 - turn);
};
