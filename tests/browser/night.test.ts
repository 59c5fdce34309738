import { Body, Equator, Horizon, MakeTime, Observer } from 'astronomy-engine';
import { decode } from 'fast-png';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { cameraView, projectPoint } from '../../core/camera/camera-view.ts';
import type { Vec3 } from '../../core/geometry/vec.ts';
import { AppPage } from './app-page.ts';
import { launch, leave } from './browser.ts';

const postHeight = 2;
const eye: Vec3 = [0, 11, 0.5];

/** A post on level ground from above, under the half moon of the worked scene in sky.md, exposed for moonlight. */
const post = JSON.stringify({
  format: 'lampfall-setup',
  version: 3,
  id: 'post',
  name: 'Post under the moon',
  place: {
    latitudeDegrees: -33,
    longitudeDegrees: 149,
    localTime: '2026-08-20T20:30',
    timeZone: 'Australia/Sydney',
    northDegrees: 40,
    sky: { zenithMagnitude: 21.8 },
  },
  subjects: [
    {
      id: 'post',
      name: 'Post',
      parts: [{ kind: 'box', widthMetres: 0.4, depthMetres: 0.4, heightMetres: postHeight }],
    },
  ],
  camera: { position: [eye[0], -eye[2], eye[1]], aim: [0, 0, 0], focalLengthMm: 24 },
  lamps: [],
  schemes: [{ id: 's', name: 'S', frames: [{ id: 'f', name: 'F', aperture: 2.8, seconds: 8, iso: 1600, passes: [] }] }],
});

/** Where the shadow of the post's upper half lies by the moon of the library, scene's axes. */
const shadowPlace = (utcMilliseconds: number): Vec3 => {
  const [time, observer] = [MakeTime(new Date(utcMilliseconds)), new Observer(-33, 149, 0)];
  const { ra, dec } = Equator(Body.Moon, time, observer, true, true);
  const { azimuth, altitude } = Horizon(time, observer, ra, dec, 'normal');
  const bearing = ((azimuth - 40) * Math.PI) / 180;
  const reach = (0.75 * postHeight) / Math.tan((altitude * Math.PI) / 180);
  return [-Math.sin(bearing) * reach, 0, Math.cos(bearing) * reach];
};

const view = cameraView({
  position: eye,
  aim: [0, 0, 0],
  rollRadians: 0,
  sensorWidthMm: 36,
  sensorHeightMm: 24,
  focalLengthMm: 24,
});

describe('the night in the picture', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => leave(browser));

  it('scrubbed through the night, the shadow of the moon turns as the moon does, numbers follow, and nothing is fetched elsewhere', async () => {
    const app = await AppPage.open(browser, { samples: 3, width: 1440, height: 900 });
    const asked: string[] = [];
    app.page.on('request', (request) => asked.push(request.url()));
    await app.openText('post.json', post);
    // a setup without lamps opens by day
    await app.page.getByLabel('By day').uncheck();
    const greyAt = async (place: Vec3): Promise<number> => {
      const { data, width, height, channels } = decode(await app.page.locator('.picture canvas').screenshot());
      const [x, y] = projectPoint(view, place) as readonly [number, number];
      let sum = 0;
      for (const dx of [-1, 0, 1])
        for (const dy of [-1, 0, 1])
          sum += data[(Math.floor(y * height + dy) * width + Math.floor(x * width + dx)) * channels + 1] as number;
      return sum / 9;
    };
    const [early, late] = [0, 2.5 * 3600_000].map((after) => shadowPlace(Date.UTC(2026, 7, 20, 10, 30) + after)) as [
      Vec3,
      Vec3,
    ];
    await app.page.locator('.hour-strip > .unfold').click();
    const slider = app.page.getByRole('slider', { name: 'Hour' });
    await app.settled();
    const first = { early: await greyAt(early), late: await greyAt(late) };
    const moon = () =>
      app.page
        .getByRole('region', { name: 'At that hour' })
        .locator('.row')
        .filter({ hasText: /^Moon/ })
        .first()
        .innerText();
    const told = await moon();
    await slider.focus();
    for (const key of ['PageUp', 'PageUp', 'Shift+ArrowRight', 'Shift+ArrowRight', 'Shift+ArrowRight'])
      await app.page.keyboard.press(key);
    await app.settled();
    const then = { early: await greyAt(early), late: await greyAt(late) };
    await app.keepScreenshot('moon-shadow');
    console.log(`shadow at 20:30 and 23:00: ${JSON.stringify({ first, then })}`);
    expect(first.early).toBeLessThan(0.75 * first.late);
    expect(then.late).toBeLessThan(0.75 * then.early);
    await expect.poll(moon).not.toBe(told);
    expect(asked.filter((url) => !url.startsWith(new URL(app.page.url()).origin) && !url.startsWith('data:'))).toEqual(
      [],
    );
    expect(app.faults).toEqual([]);
    await app.close();
  });
});
