import { packedStars } from '../../app/build/packed-stars.ts';
import { type CameraView, cameraView } from '../../core/camera/camera-view.ts';
import { type DomeOf, domeLightOf } from '../../core/sky/dome-of.ts';
import type { SeenSky } from '../../core/sky/seen-sky.ts';
import { skyAt } from '../../core/sky/sky-at.ts';
import type { SkyInput } from '../../core/sky/sky-input.ts';
import { unpackStars } from '../../core/sky/star-catalogue.ts';
import { skyPicture } from '../../core/trace/sky-picture.ts';
import { radiansFromDegrees } from '../../core/units/angle.ts';

/** Milliseconds in Node. */
export interface SkyTimes {
  /** Where everything stands, at one instant. */
  readonly stateMs: number;
  /** The sky of one instant as a light on the land; the first one makes the Milky Way too. */
  readonly firstDomeMs: number;
  readonly domeMs: number;
  /** The sky as a 14 mm lens sees it, 1280 x 853, with 41,411 stars: 12 s, and trails of 10 minutes. */
  readonly pictureMs: number;
  readonly trailsMs: number;
}

const inputAfter = (minutes: number): SkyInput => ({
  latitudeRadians: radiansFromDegrees(-33),
  longitudeRadians: radiansFromDegrees(149),
  utcMilliseconds: Date.UTC(2026, 7, 20, 10, 30) + minutes * 60_000,
  northRadians: 0,
  zenithMagnitude: 21.7,
  extinctionMagnitudes: 0.2,
  thinCloudDepth: 0,
});

const view: CameraView = cameraView({
  position: [0, 1, 0],
  aim: [0, 40, -60],
  rollRadians: 0,
  sensorWidthMm: 36,
  sensorHeightMm: 24,
  focalLengthMm: 14,
});

/** Mean of some runs after as many to warm up. */
const meanMs = (runs: number, run: (i: number) => unknown): number => {
  for (let i = 0; i < runs; i++) run(i);
  const start = performance.now();
  for (let i = 0; i < runs; i++) run(runs + i);
  return (performance.now() - start) / runs;
};

export const skyTimes = (): SkyTimes => {
  const stars = unpackStars(packedStars());
  const dome = (minutes: number): DomeOf => ({ part: 'sky', input: inputAfter(minutes), domes: [] });
  const seen = (seconds: number, minutes: number): SeenSky => ({
    input: inputAfter(minutes),
    domes: [],
    seconds,
    haze: null,
  });
  const picture = (seconds: number) => (i: number) =>
    skyPicture({ view, width: 1280, height: 853 }, seen(seconds, i), stars);
  const start = performance.now();
  domeLightOf(dome(-1));
  const firstDomeMs = performance.now() - start;
  return {
    stateMs: meanMs(200, (i) => skyAt(inputAfter(i))),
    firstDomeMs,
    domeMs: meanMs(10, (i) => domeLightOf(dome(i))),
    pictureMs: meanMs(2, picture(12)),
    trailsMs: meanMs(1, picture(600)),
  };
};

/** Issue bar: a whole evaluation of the sky's state under a millisecond. */
const mostStateMs = 1;

export const skyLines = ({ stateMs, firstDomeMs, domeMs, pictureMs, trailsMs }: SkyTimes): string =>
  [
    `Sky: state ${stateMs.toFixed(2)} ms (bar: under ${mostStateMs} ms${stateMs < mostStateMs ? '' : ', MISSED'})`,
    `  as a light ${domeMs.toFixed(1)} ms, the first time ${firstDomeMs.toFixed(0)} ms`,
    `  as a picture, 14 mm, 1280 x 853, 41,411 stars: 12 s ${pictureMs.toFixed(0)} ms, 10 min ${trailsMs.toFixed(0)} ms`,
  ].join('\n');
