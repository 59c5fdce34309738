import { readFileSync } from 'node:fs';
import { decode } from 'fast-png';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Opening, Setup, Subject } from '../../core/setup/schema/setup.ts';
import { AppPage, differingShare } from './app-page.ts';
import { launch, leave } from './browser.ts';

type Place = readonly [east: number, north: number, up: number];

const minus = (a: Place, b: Place): Place => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const unit = (a: Place): Place => [a[0] / Math.hypot(...a), a[1] / Math.hypot(...a), a[2] / Math.hypot(...a)];
const cross = (a: Place, b: Place): Place => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** Where a pixel's middle looks through a pinhole to the ground; null above the horizon. Worked out here, apart from core. */
const groundBehind = ({ camera }: Setup, x: number, y: number, width: number, height: number): Place | null => {
  const forward = unit(minus(camera.aim, camera.position));
  const right = unit(cross(forward, [0, 0, 1]));
  const up = cross(right, forward);
  const h = (((x + 0.5) / width) * 2 - 1) * (camera.sensor.widthMm / 2 / camera.focalLengthMm);
  const v = (1 - ((y + 0.5) / height) * 2) * (camera.sensor.heightMm / 2 / camera.focalLengthMm);
  const way = [0, 1, 2].map((k) => (forward[k] ?? 0) + h * (right[k] ?? 0) + v * (up[k] ?? 0));
  const [e, n, u] = way as [number, number, number];
  if (u >= 0) return null;
  const t = -camera.position[2] / u;
  return [camera.position[0] + e * t, camera.position[1] + n * t, 0];
};

/** Where the door is: west and east jamb, lintel, and the wall's outer and inner face, in the scene's axes. */
const doorOf = (hut: Subject) => {
  const wall = hut.parts.find(
    (part) => part.kind === 'wall' && part.openings.some(({ sillMetres }) => sillMetres === 0),
  );
  if (wall?.kind !== 'wall') throw new Error('the hut has no door');
  const door = wall.openings.find(({ sillMetres }) => sillMetres === 0) as Opening;
  const middle = hut.position[0] + wall.position[0] + door.acrossMetres;
  const north = hut.position[1] + wall.position[1];
  return {
    west: middle - door.widthMetres / 2,
    east: middle + door.widthMetres / 2,
    lintel: hut.position[2] + door.heightMetres,
    outer: north - wall.thicknessMetres / 2,
    inner: north + wall.thicknessMetres / 2,
  };
};

describe('a hut with a lamp inside', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => leave(browser));

  it('lets light fall through the doorway onto the ground, its edges where the doorway projects to within a pixel; saved and opened again it is the same picture', async () => {
    const app = await AppPage.open(browser, { samples: 1, pixelRatio: 1 });
    const { page } = app;
    await page.locator('.menu summary').click();
    await page.getByRole('button', { name: /^New setup/ }).click();
    const section = page.getByRole('region', { name: 'Subjects' });
    await section.locator('.add-subject summary').click();
    await page.getByRole('group', { name: 'Add a subject' }).getByRole('button', { name: /^Hut/ }).click();
    // the camera's own height, so that it looks down on the ground before the door
    await page.locator('.slip-head', { hasText: 'Camera' }).click();
    const height = page.getByRole('textbox', { name: 'Height', exact: true });
    await height.fill('3');
    await height.press('Enter');
    for (const [label, value] of [
      ['Aperture', '2'],
      ['ISO', '6400'],
    ] as const) {
      await page.getByRole('textbox', { name: label, exact: true }).fill(value);
      await page.getByRole('textbox', { name: label, exact: true }).press('Enter');
    }
    await page.getByRole('button', { name: 'bare bulb', exact: true }).click();
    const lampHeight = page.locator('.slip-open').getByLabel(/^Height/);
    await lampHeight.fill('1');
    await lampHeight.press('Enter');
    // into the middle of the hut, by hand on the plan
    await page.locator('.groundplan svg').scrollIntoViewIfNeeded();
    const hut = await page.locator('.mark[aria-label^="Hut"] .footprint').boundingBox();
    if (!hut) throw new Error('no hut on the plan');
    const from = await app.lampPlace((await page.locator('.slip-open strong').innerText()).trim());
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(hut.x + hut.width / 2, hut.y + hut.height / 2, { steps: 6 });
    await page.mouse.up();
    await app.settled();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page
        .locator('.menu summary')
        .click()
        .then(() => page.getByRole('button', { name: 'Save as a file' }).click()),
    ]);
    const text = readFileSync(await download.path(), 'utf8');
    const setup = JSON.parse(text) as Setup;
    const lamp = setup.schemes[0]?.frames[0]?.passes[0]?.waypoints[0]?.position as Place;
    const door = doorOf(setup.subjects[0] as Subject);
    // inside, under the window's sill: nothing falls on the ground but what comes through the door
    expect(lamp[1]).toBeGreaterThan(door.inner);
    expect(lamp[2]).toBe(1);
    const shot = decode(await page.locator('.picture canvas').screenshot());
    const [width, high] = [shot.width, shot.height];
    const passes = (place: Place) =>
      [door.outer, door.inner].every((north) => {
        const t = (north - lamp[1]) / (place[1] - lamp[1]);
        const [east, up] = [lamp[0] + (place[0] - lamp[0]) * t, lamp[2] + (place[2] - lamp[2]) * t];
        return east > door.west && east < door.east && up > 0 && up < door.lintel;
      });
    /** What the light should be: 1 lit, 0 dark, null where the ground before the house is not what is seen. */
    const expected = Array.from({ length: width * high }, (_, i) => {
      const place = groundBehind(setup, i % width, Math.floor(i / width), width, high);
      if (!place || place[1] > door.outer - 0.15) return null;
      return passes(place) ? 1 : 0;
    });
    const level = (i: number) => shot.data[i * shot.channels + 1] as number;
    const [lit, dark] = [1, 0].map((wanted) => expected.flatMap((value, i) => (value === wanted ? [level(i)] : [])));
    const median = (values: readonly number[]) => [...values].sort((a, b) => a - b)[values.length >> 1] ?? 0;
    expect(lit?.length).toBeGreaterThan(1500);
    expect(median(lit ?? [])).toBeGreaterThan(median(dark ?? []) + 20);
    const threshold = median(dark ?? []) + 8;
    /** Whether what should be there, or its opposite, is within a pixel. */
    const near = (i: number, wanted: number) =>
      [-1, 0, 1].some((dy) => [-1, 0, 1].some((dx) => expected[i + dy * width + dx] === wanted));
    let wrong = 0;
    expected.forEach((value, i) => {
      const x = i % width;
      if (value === null || x === 0 || x === width - 1) return;
      const seen = level(i) > threshold ? 1 : 0;
      if (seen !== value && !near(i, seen)) wrong++;
    });
    expect(wrong).toBe(0);
    await app.keepScreenshot('hut-light');
    const before = await app.picture();
    await page.reload();
    await page.waitForSelector('.mark');
    await app.openText('hut.lampfall.json', text);
    await app.settled();
    expect(differingShare(before, await app.picture(), 0)).toBe(0);
    expect(app.faults).toEqual([]);
    await page.close();
  });
});
