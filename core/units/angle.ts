/** Radians from degrees. */
export const radiansFromDegrees = (degrees: number): number => (degrees * Math.PI) / 180;

/** Degrees from radians. */
export const degreesFromRadians = (radians: number): number => (radians * 180) / Math.PI;

/** The same bearing in [0, 360). */
export const wrapDegrees = (degrees: number): number => ((degrees % 360) + 360) % 360;
