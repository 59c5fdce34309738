/** Where and when, and how clear and dark the air is: all that the sky is worked out from. Plain data. */
export interface SkyInput {
  /** North positive. */
  readonly latitudeRadians: number;
  /** East positive. */
  readonly longitudeRadians: number;
  readonly utcMilliseconds: number;
  /** True bearing of the scene's north axis (-z): turns the sky against the scene. */
  readonly northRadians: number;
  /** Zenith of the site without moon, away from the Milky Way, mag/arcsec^2. */
  readonly zenithMagnitude: number;
  /** Light lost straight up at 550 nm, magnitudes an air mass. */
  readonly extinctionMagnitudes: number;
  /** Optical depth of thin high cloud, straight up; 0 = none. */
  readonly thinCloudDepth: number;
}
