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

/** Marked parts of a second, 1/8000 to 1/4, then 0.3 s to 30 s: what the camera times, in thirds of a stop. From memory. */
const partLabels = [
  8000, 6400, 5000, 4000, 3200, 2500, 2000, 1600, 1250, 1000, 800, 640, 500, 400, 320, 250, 200, 160, 125, 100, 80, 60,
  50, 40, 30, 25, 20, 15, 13, 10, 8, 6, 5, 4,
];
const cameraTimedLabels = [
  ...partLabels.map((part) => 1 / part),
  ...[0.3, 0.4, 0.5, 0.6, 0.8, 1, 1.3, 1.6, 2, 2.5, 3.2, 4, 5, 6, 8, 10, 13, 15, 20, 25, 30],
];
const oneSecond = cameraTimedLabels.indexOf(1);

/** Bulb times, about a third of a stop apart. One reads them off a watch, so they are what they say. */
const bulbLabels = [40, 50, 60, 80, 100, 120, 150, 180, 240, 300, 400, 480, 600, 720, 900];

const scales = { aperture: apertureLabels, iso: isoLabels, seconds: [...cameraTimedLabels, ...bulbLabels] };

/** How far a value may be from a marking and still be it: parts of a second have no exact decimals (0.0333 is 1/30). */
const slackShare = 2e-3;

/** The next marking up (+1) or down (-1) from a value that need not be on the scale; stays at the scale's ends. */
export const stepThird = (scale: keyof typeof scales, value: number, direction: 1 | -1): number => {
  const labels = scales[scale];
  const slack = value * slackShare;
  const next =
    direction > 0 ? labels.find((label) => label > value + slack) : labels.findLast((label) => label < value - slack);
  return next ?? value;
};

const placeOn = (labels: readonly number[], marked: number): number =>
  labels.findIndex((label) => Math.abs(label - marked) <= marked * slackShare);

/**
 * Exact f-number for a marked one: f/2.8 is really 2^(9/6) = 2.8284, f/11 is 11.3137 (checkvalues.md, trap T8).
 * A number that is not a marking of the scale is taken as it stands.
 */
export const exactFNumber = (marked: number): number => {
  const k = placeOn(apertureLabels, marked);
  return k < 0 ? marked : 2 ** (k / 6);
};

/**
 * Exact shutter time for a marked one, both in seconds: 15 s is really 16, 1/60 is 1/64 (trap T8). Times above 30 s
 * and times that are not a marking are taken as they stand.
 */
export const exactSeconds = (marked: number): number => {
  const k = placeOn(cameraTimedLabels, marked);
  return k < 0 ? marked : 2 ** ((k - oneSecond) / 3);
};

/** Exact ISO speed for a marked one: ISO 1250 is really 100 x 2^(11/3) = 1269.9. Other numbers stay as they are. */
export const exactIso = (marked: number): number => {
  const k = placeOn(isoLabels, marked);
  return k < 0 ? marked : 50 * 2 ** (k / 3);
};

/** What a camera shows for a setting: "f/2.8", "ISO 3200", "1/60 s", "20 s". Times from 0.3 s on are decimal. */
export const markedText = (scale: keyof typeof scales, value: number): string => {
  if (scale === 'aperture') return `f/${Number(value.toFixed(1))}`;
  if (scale === 'iso') return `ISO ${Math.round(value)}`;
  return value < 0.3 ? `1/${Math.round(1 / value)} s` : `${Number(value.toFixed(1))} s`;
};
