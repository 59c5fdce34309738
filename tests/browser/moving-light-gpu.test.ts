import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { midGreyRatioPerLuminanceSecond } from '../../core/camera/exposure.ts';
import { parseSetup } from '../../core/setup/parse-setup.ts';
import { buildWorld, type WorldFrame } from '../../core/world/world.ts';
import { launch, leave, openPage } from './browser.ts';
import { onBoth } from './on-both.ts';

const candela = 1000;
const metresPerSecond = 0.5;
/** From the wall to the track. */
const awayMetres = 2;
const reflectance = 0.05;

/** A bare lamp carried past a wall, from so far on one side of the middle to as far on the other; seen square on. */
const carried = (reachMetres: number) => {
  const seconds = (2 * reachMetres) / metresPerSecond;
  const waypoint = (time: number, east: number) => ({ time, position: [east, 8, 5], aim: [east, 10, 5] });
  return {
    format: 'lampfall-setup',
    version: 3,
    id: 'carried',
    name: 'Carried',
    // behind the track with a long lens: what is seen is 7 cm in the middle of the wall
    camera: { position: [0, 6, 5], aim: [0, 10, 5], focalLengthMm: 2000, drawn: { holder: false } },
    place: { skylight: { illuminanceLux: 0 } },
    subjects: [
      {
        id: 'wall',
        name: 'Wall',
        finish: { reflectance },
        parts: [{ kind: 'box', position: [0, 10.5, 0], widthMetres: 400, depthMetres: 1, heightMetres: 60 }],
      },
    ],
    lamps: [
      { kind: 'point', id: 'lamp', name: 'Lamp', temperatureKelvin: 4200, output: { from: 'peak-candela', candela } },
    ],
    schemes: [
      {
        id: 's',
        name: 'S',
        frames: [
          {
            id: 'f',
            name: 'F',
            aperture: 16,
            iso: 100,
            seconds,
            passes: [
              {
                id: 'p',
                name: 'P',
                lampId: 'lamp',
                off: seconds,
                waypoints: [waypoint(0, -reachMetres), waypoint(seconds, reachMetres)],
              },
            ],
          },
        ],
      },
    ],
  };
};

/** Dose in lx s at the middle: 2 I / (v d) for a track without end (checkvalues.md 1.4), and its part for one that ends. */
const doseOf = (reachMetres: number) => {
  const share = reachMetres / Math.hypot(reachMetres, awayMetres);
  return ((2 * candela) / (metresPerSecond * awayMetres)) * share;
};

const mean = (picture: ArrayLike<number>) =>
  Array.from(picture)
    .filter((_, i) => i % 3 === 1)
    .reduce((sum, v) => sum + v, 0) /
  (picture.length / 3);

describe('a bare lamp carried past a wall: H = 2 I / (v d) x reach / hypot(reach, d), inverse square and cosine along the track', () => {
  let browser: Browser;
  let page: Page;
  beforeAll(async () => {
    browser = await launch();
    ({ page } = await openPage(browser, inject('harnessUrl'), 300, 200));
  });
  afterAll(() => leave(browser));

  it.each([1, 6, 120])('track of %d m to each side: both renderers within 1 percent', async (reachMetres) => {
    const text = JSON.stringify(carried(reachMetres));
    const setup = parseSetup(text);
    const world = buildWorld(setup, setup.schemes[0] as (typeof setup.schemes)[number]);
    const frame = world.frames[0] as WorldFrame;
    const size = { width: 9, height: 6, samples: 64 };
    // the shutter’s real time is not the marked one: the lamp is on as long as it is open
    const lit = frame.lights[0]?.seconds ?? 0;
    const marked = (2 * reachMetres) / metresPerSecond;
    const luminanceSeconds = (doseOf(reachMetres) * reflectance) / Math.PI;
    const expected = ((luminanceSeconds * lit) / marked) * midGreyRatioPerLuminanceSecond(frame.exposure);
    const both = await onBoth(page, { text, schemeId: 's', frameId: 'f' }, size);
    const [gpu, cpu] = [mean(both.gpu), mean(both.cpu)];
    console.log(
      `reach ${reachMetres} m: CPU ${(100 * (cpu / expected - 1)).toFixed(3)} %, GPU ${(100 * (gpu / expected - 1)).toFixed(3)} %`,
    );
    expect(expected).toBeLessThan(7);
    expect(Math.abs(cpu / expected - 1)).toBeLessThanOrEqual(0.01);
    expect(Math.abs(gpu / expected - 1)).toBeLessThanOrEqual(0.01);
  });
});
