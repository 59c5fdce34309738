import { describe, expect, it } from 'vitest';
import { projectPoint } from '../../../core/camera/camera-view.ts';
import { apply, invert } from '../../../core/colour/matrix.ts';
import type { Vec3 } from '../../../core/geometry/vec.ts';
import { starReading } from '../../../core/readings/star-reading.ts';
import { starViewOf } from '../../../core/readings/star-view.ts';
import { apparentDirection } from '../../../core/sky/refraction.ts';
import { skyAt } from '../../../core/sky/sky-at.ts';
import { relativeError } from '../support/errors.ts';
import { cameraToward, hourPlace } from '../support/hours.ts';
import { readNight } from '../support/read-night.ts';
import { skyInput } from '../support/sky-inputs.ts';

describe('starReading under the sky of an hour', () => {
  it.each([
    [0, 20],
    [180, 33],
    [90, 40],
    [250, 60],
  ])(
    'looking to %d at %d degrees up: the middle trail is what a star there moves over the picture (rel 1 %)',
    (bearing, altitude) => {
      const { world, setup, frame } = readNight({
        place: hourPlace('2026-08-11T20:30'),
        camera: cameraToward(bearing, altitude),
        frame: { seconds: 25.5 },
      });
      const { seen } = starReading(setup.camera, frame, starViewOf(world));
      const start = skyAt(skyInput(-33, 149, '2026-08-11T10:30Z'));
      const end = skyAt(skyInput(-33, 149, Date.parse('2026-08-11T10:30Z') + 25_500));
      // a star that is in the very middle as the shutter opens
      const star = apply(invert(start.worldFromJ2000), world.view.forward);
      const place = (v: Vec3) => projectPoint(world.view, [v[0], v[1] + 1.5, v[2]]) as readonly [number, number];
      const [a, b] = [start, end].map((state) => place(apply(state.worldFromJ2000, star))) as [
        readonly [number, number],
        readonly [number, number],
      ];
      const moved = Math.hypot((b[0] - a[0]) * 6000, (b[1] - a[1]) * 4000);
      expect(Math.abs((seen?.middle.trailPixels ?? Number.NaN) - moved)).toBeLessThanOrEqual(0.01 * moved + 0.02);
      expect(apparentDirection(world.view.forward)[1]).toBeGreaterThan(0);
    },
  );

  it('14 mm, 6 um, a marked 25 s at declination -29: 3.78 px (rel 0.2 %); the longest trail stands toward a corner and is longer', () => {
    // f w t cos(d) / p: 3.72 px for 25 s (sky.md 6), and the marked 25 s are 25.4. Straight up at latitude -29 the declination is -29
    const { world, setup, frame } = readNight({
      place: { ...hourPlace('2026-08-11T20:30'), latitudeDegrees: -29 },
      camera: cameraToward(0, 90, { focalLengthMm: 14 }),
      frame: { seconds: 25 },
    });
    const { seen, declinationDegrees } = starReading(setup.camera, frame, starViewOf(world));
    expect(seen?.middle.declinationDegrees).toBeCloseTo(-29, 1);
    expect(relativeError(seen?.middle.trailPixels ?? 0, (3.717 * 2 ** (14 / 3)) / 25)).toBeLessThanOrEqual(2e-3);
    expect(seen?.longest.trailPixels).toBeGreaterThan(2 * 3.72);
    // the equator, 29 degrees off, is in a picture 81 degrees high
    expect(Math.abs(declinationDegrees)).toBeLessThan(5);
  });

  it('keeps the equator under a plain sky, and where no sky is seen', () => {
    const plain = readNight({ place: {} });
    expect(starReading(plain.setup.camera, plain.frame, starViewOf(plain.world))).toMatchObject({
      declinationDegrees: 0,
      seen: null,
    });
    const down = readNight({ place: hourPlace('2026-08-11T20:30'), camera: cameraToward(0, -60) });
    expect(starViewOf(down.world)).toBeNull();
  });
});
