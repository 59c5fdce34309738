import { trailPixels } from './star-trail.ts';

/** What the rules for the longest star exposure ask about. */
export interface StarLens {
  readonly focalLengthMm: number;
  /** Exact f-number. */
  readonly fNumber: number;
  readonly pitchMicrometres: number;
  readonly sensorDiagonalMm: number;
  /** Of the star in the picture that is nearest the celestial equator, where trails are longest. */
  readonly declinationRadians: number;
}

/** What one rule allows, and how long the trail really is then. */
export interface StarRule {
  readonly name: string;
  readonly formula: string;
  readonly seconds: number;
  readonly trailPixels: number;
}

/** Diagonal of a 36 x 24 mm sensor, which "full-frame equivalent" refers to. */
const fullFrameDiagonalMm = Math.hypot(36, 24);

/**
 * 500 over the full-frame equivalent focal length. Whatever the lens, the trail is 36.5 micrometres of a 36 x 24 mm
 * sensor at the equator: 8.5 pixels of 4.3, not none. Common practice, no published source.
 *
 * @param fixedNumber 500; the stricter 400 and 300 are in use too
 */
export const fixedRuleSeconds = (fullFrameEquivalentMm: number, fixedNumber = 500): number =>
  fixedNumber / fullFrameEquivalentMm;

/** Time in which a star crosses one pixel: p / (f w cos(declination)); unbounded at the pole. */
export const onePixelSeconds = (focalLengthMm: number, pitchMicrometres: number, declinationRadians: number): number =>
  1 / trailPixels(focalLengthMm, 1, pitchMicrometres, declinationRadians);

/**
 * Long form of the pixel rule: k (16.9 N + 0.1 f + 13.7 p) / (f cos(declination)), of diffraction, focus and one pixel
 * of drift (13.7 p/f). Published formula; it allows about half of the short form's time.
 *
 * @param sharpnessFactor k: 1 for points; 2 and 3 let trails show
 */
export const longPixelRuleSeconds = (
  { focalLengthMm, fNumber, pitchMicrometres, declinationRadians }: Omit<StarLens, 'sensorDiagonalMm'>,
  sharpnessFactor = 1,
): number =>
  (sharpnessFactor * (16.9 * fNumber + 0.1 * focalLengthMm + 13.7 * pitchMicrometres)) /
  (focalLengthMm * Math.cos(declinationRadians));

/** Short form of the pixel rule: (35 N + 30 p) / f. Published formula, without declination. */
export const shortPixelRuleSeconds = (focalLengthMm: number, fNumber: number, pitchMicrometres: number): number =>
  (35 * fNumber + 30 * pitchMicrometres) / focalLengthMm;

/**
 * The rules side by side, each with its formula, since two that go by one name differ by a factor of two, and with the
 * trail that a star at the given declination draws in the middle of the picture.
 */
export const starRules = (lens: StarLens): readonly StarRule[] => {
  const { focalLengthMm, fNumber, pitchMicrometres, sensorDiagonalMm, declinationRadians } = lens;
  const equivalentMm = (focalLengthMm * fullFrameDiagonalMm) / sensorDiagonalMm;
  const rule = (name: string, formula: string, seconds: number): StarRule => ({
    name,
    formula,
    seconds,
    trailPixels: trailPixels(focalLengthMm, seconds, pitchMicrometres, declinationRadians),
  });
  return [
    rule('one pixel of drift', 'p ÷ (f ω cos δ)', onePixelSeconds(focalLengthMm, pitchMicrometres, declinationRadians)),
    rule('pixel rule, long form', '(16.9 N + 0.1 f + 13.7 p) ÷ (f cos δ)', longPixelRuleSeconds(lens)),
    rule(
      'pixel rule, short form',
      '(35 N + 30 p) ÷ f',
      shortPixelRuleSeconds(focalLengthMm, fNumber, pitchMicrometres),
    ),
    rule('500 rule', '500 ÷ f in full-frame terms', fixedRuleSeconds(equivalentMm)),
  ];
};
