/** Marked f-numbers of the third-stop scale from f/1; the exact value of entry k is 2^(k/6). Labels from memory. */
const apertureLabels = [
  1, 1.1, 1.2, 1.4, 1.6, 1.8, 2, 2.2, 2.5, 2.8, 3.2, 3.5, 4, 4.5, 5, 5.6, 6.3, 7.1, 8, 9, 10, 11, 13, 14, 16, 18, 20,
  22, 25, 29, 32,
];

/** Marked ISO speeds of the third-stop scale from ISO 50; the exact value of entry k is 50 x 2^(k/3). */
const isoLabels = [
  50, 64, 80, 100, 125, 160, 200, 250, 320, 400, 500, 640, 800, 1000, 1250, 1600, 2000, 2500, 3200, 4000, 5000, 6400,
  8000, 10000, 12800, 16000, 20000, 25600, 32000, 40000, 51200,
];

/** Marked shutter times in seconds; bulb times above 30 s go on in thirds of a stop. */
const secondsLabels = [
  1 / 30,
  1 / 25,
  1 / 20,
  1 / 15,
  1 / 13,
  0.1,
  1 / 8,
  1 / 6,
  0.2,
  0.25,
  0.3,
  0.4,
  0.5,
  0.6,
  0.8,
  1,
  1.3,
  1.6,
  2,
  2.5,
  3.2,
  4,
  5,
  6,
  8,
  10,
  13,
  15,
  20,
  25,
  30,
  40,
  50,
  60,
  80,
  100,
  120,
  150,
  180,
  240,
  300,
  400,
  480,
  600,
  720,
  900,
];

const scales = { aperture: apertureLabels, iso: isoLabels, seconds: secondsLabels };

/** The next marking up (+1) or down (-1) from a value that need not be on the scale; stays at the scale's ends. */
export const stepThird = (scale: keyof typeof scales, value: number, direction: 1 | -1): number => {
  const labels = scales[scale];
  const slack = value * 1e-3;
  const next =
    direction > 0 ? labels.find((label) => label > value + slack) : labels.findLast((label) => label < value - slack);
  return next ?? value;
};

/**
 * Exact f-number for a marked one: f/2.8 is really 2^(9/6) = 2.8284, f/11 is 11.3137 (checkvalues.md, trap T8).
 * A number that is not a marking of the scale is taken as it stands.
 */
export const exactFNumber = (marked: number): number => {
  const k = apertureLabels.indexOf(marked);
  return k < 0 ? marked : 2 ** (k / 6);
};
