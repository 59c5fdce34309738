import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { projectPoint } from '../../core/camera/camera-view.ts';
import { projectToGround } from '../../core/geometry/shadow.ts';
import { validateSetup } from '../../core/setup/parse-setup.ts';
import type { Scheme } from '../../core/setup/schema/setup.ts';
import { buildWorld } from '../../core/world/world.ts';
import { launch, leave, openPage } from './browser.ts';
import type { Harness } from './harness/main.ts';

const size = { width: 320, height: 200 };
/** A thin board 5 m north, its broad side to the south, 1 m high, 5 cm thick. */
const board = { width: 0.16, depth: 0.05, height: 1, north: 5 };

const setupWith = (lampHeight: number, lampNorth: number) =>
  validateSetup({
    format: 'lampfall-setup',
    version: 3,
    id: 'edge',
    name: 'Edge',
    place: { skylight: { illuminanceLux: 0 } },
    subjects: [
      {
        id: 'board',
        name: 'Board',
        position: [0, board.north, 0],
        parts: [{ kind: 'box', widthMetres: board.width, depthMetres: board.depth, heightMetres: board.height }],
      },
    ],
    camera: { position: [1.2, 2, 8], aim: [0, 5, 0], focalLengthMm: 24, sensor: { widthMm: 36, heightMm: 22.5 } },
    lamps: [
      {
        kind: 'torch',
        id: 't',
        name: 'T',
        output: { from: 'lumens', lumens: 100 },
        diameterMm: 1,
        beam: { shape: 'flood', degrees: 170 },
      },
    ],
    schemes: [
      {
        id: 's',
        name: 'S',
        frames: [
          {
            id: 'f',
            name: 'F',
            seconds: 10,
            passes: [
              {
                id: 'p',
                name: 'P',
                lampId: 't',
                off: 5,
                waypoints: [{ position: [0, lampNorth, lampHeight], aim: [0, 5, 0.5] }],
              },
            ],
          },
        ],
      },
    ],
  });

describe('shadow edge in the GPU picture', () => {
  let browser: Browser;
  let page: Page;
  beforeAll(async () => {
    browser = await launch();
    ({ page } = await openPage(browser, inject('harnessUrl'), 300, 200));
  });
  afterAll(() => leave(browser));

  // the tip by similar triangles (checkvalues.md 8a, 8d)
  it.each([
    [2, 1],
    [3, 2],
    [1.6, 2],
    [2.5, 9],
  ])('a lamp %d m up, %d m north: within one pixel of the projected tip', async (lampHeight, lampNorth) => {
    const setup = setupWith(lampHeight, lampNorth);
    const picture = await page.evaluate(
      ([text, w, h]) => (window as unknown as { harness: Harness }).harness.picture(text, 's', 'f', w, h, 1),
      [JSON.stringify(setup), size.width, size.height] as const,
    );
    const { view } = buildWorld(setup, setup.schemes[0] as Scheme);
    const away = lampNorth < board.north ? 1 : -1;
    const top = [0, board.height, -(board.north + (away * board.depth) / 2)] as const;
    const tip = projectToGround([0, lampHeight, -lampNorth], top);
    if (!tip) throw new Error('no tip');
    const pixel = (north: number) => {
      const [x, y] = projectPoint(view, [0, 0, -north]) as readonly [number, number];
      return [x * size.width, y * size.height] as const;
    };
    const isLit = ([x, y]: readonly [number, number]) =>
      (picture[3 * (Math.floor(y) * size.width + Math.floor(x))] as number) > 0;
    const tipNorth = -tip[2];
    const start = (board.north + tipNorth) / 2;
    expect(isLit(pixel(start))).toBe(false);
    const centre = ([x, y]: readonly [number, number]) => [Math.floor(x) + 0.5, Math.floor(y) + 0.5] as const;
    // how far along the shadow, in pixels from its tip, a pixel lies
    const [from, tipPixel] = [pixel(start), pixel(tipNorth)];
    const run = [tipPixel[0] - from[0], tipPixel[1] - from[1]] as const;
    const along = ([x, y]: readonly [number, number]) =>
      ((x - tipPixel[0]) * run[0] + (y - tipPixel[1]) * run[1]) / Math.hypot(...run);
    let dark = centre(from);
    let error = Number.POSITIVE_INFINITY;
    for (let k = 0; k < 3 && !Number.isFinite(error); k += 1 / 512) {
      const here = centre(pixel(start + (tipNorth - start) * k));
      if (isLit(here)) error = Math.abs(along(dark) + along(here)) / 2;
      else dark = here;
    }
    console.log(`lamp ${lampHeight} m up, ${lampNorth} m north: edge ${error.toFixed(2)} px from the tip`);
    expect(error).toBeLessThanOrEqual(1);
  });
});
