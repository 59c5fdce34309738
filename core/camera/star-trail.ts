/** Seconds in which the sky turns once: the mean sidereal day. */
const siderealDaySeconds = 86164.0905;

/** How fast the sky turns, in radians a second. */
export const siderealRadiansPerSecond = (2 * Math.PI) / siderealDaySeconds;

/**
 * Length in pixels that a star draws on a still camera: f w t cos(declination) / p. Holds in the middle of the picture
 * of a rectilinear lens and for short trails. At q off the axis the image is larger by 1 / cos^2 q outwards and by
 * 1 / cos q across, so trails in the corners are longer.
 *
 * @param seconds time that the shutter is open
 * @param pitchMicrometres distance between pixel centres
 * @param declinationRadians 0 on the celestial equator, where stars run fastest; at the poles the trail is 0
 */
export const trailPixels = (
  focalLengthMm: number,
  seconds: number,
  pitchMicrometres: number,
  declinationRadians: number,
): number =>
  (focalLengthMm * 1000 * siderealRadiansPerSecond * seconds * Math.cos(declinationRadians)) / pitchMicrometres;
