import { describe, expect, it } from 'vitest';
import { projectPoint } from '../../../core/camera/camera-view.ts';
import { apply, invert } from '../../../core/colour/matrix.ts';
import type { Vec3 } from '../../../core/geometry/vec.ts';
import { moonReading } from '../../../core/readings/moon-reading.ts';
import { skyLook, skyReading } from '../../../core/readings/sky-reading.ts';
import { starReading } from '../../../core/readings/star-reading.ts';
import { starViewOf } from '../../../core/readings/star-view.ts';
import { unlitLevel } from '../../../core/readings/unlit-level.ts';
import { apparentDirection } from '../../../core/sky/refraction.ts';
import { skyAt } from '../../../core/sky/sky-at.ts';
import { degreesApart } from '../../../core/units/angle.ts';
import { boxAt } from '../support/cautions.ts';
import { relativeError } from '../support/errors.ts';
import { cameraToward, hourPlace } from '../support/hours.ts';
import { onlyPassOf } from '../support/read-pass.ts';
import { onePassSetup } from '../support/scenes.ts';
import { skyInput } from '../support/sky-inputs.ts';

const pass = { waypoints: [{ position: [3, 0, 1], aim: [0, 8, 1] }] };
const read = (what: { camera?: object; place: object; subjects?: object[]; frame?: object }) => {
  const setup = onePassSetup({ pass, camera: cameraToward(0, 10), ...what });
  return { ...onlyPassOf(setup), setup, frame: setup.schemes[0]?.frames[0] as never };
};

describe('skyReading', () => {
  // positions: shared/reference/sky.md, section 3, held there against Meeus's formulas by another library
  it('tells sun, moon and core of the worked scene by true bearings, whatever the scene’s north (0.03 degrees)', () => {
    for (const northDegrees of [0, 120]) {
      const { world } = read({ place: hourPlace('2026-08-11T20:30', { northDegrees }) });
      const sky = skyReading(world);
      expect(sky?.sun.altitudeDegrees).toBeCloseTo(-37.53, 1);
      expect(sky?.sun.light).toBe('dark');
      expect(sky?.moon.isUp).toBe(false);
      expect(Math.abs((sky?.moon.altitudeDegrees ?? 0) + 55.86)).toBeLessThanOrEqual(0.03);
      expect(degreesApart(sky?.moon.bearingDegrees ?? Number.NaN, 261.9)).toBeLessThanOrEqual(0.06);
      // 0.0241 from the middle of the earth; as seen from the place the phase is up to a degree off: 0.0027 there
      expect(Math.abs((sky?.moon.litShare ?? 0) - 0.0241)).toBeLessThanOrEqual(0.0027);
      expect(Math.abs((sky?.core.altitudeDegrees ?? 0) - 85.93)).toBeLessThanOrEqual(0.03);
    }
  });

  it('is null under a plain sky, and where the zone is unknown', () => {
    expect(skyReading(read({ place: {} }).world)).toBeNull();
    expect(skyReading(read({ place: hourPlace('2026-08-11T20:30', { timeZone: 'Nowhere/None' }) }).world)).toBeNull();
  });

  it.each([
    ['17:30', 'day'],
    ['17:45', 'civil twilight'],
    ['18:10', 'nautical twilight'],
    ['18:40', 'astronomical twilight'],
    ['19:00', 'dark'],
  ])('names the light at %s: %s (sunset 17:33, dark from 18:57)', (time, light) => {
    expect(skyReading(read({ place: hourPlace(`2026-08-11T${time}`) }).world)?.sun.light).toBe(light);
  });

  it('straight up, moonless and with the galactic pole there, is as dark as the site is said to be (abs 0.15 mag)', () => {
    // latitude 27 N: the pole at declination 27.1 culminates overhead; new moon 2026-04-17 (from memory)
    const place = {
      latitudeDegrees: 27.1,
      longitudeDegrees: 0,
      localTime: '2026-04-16T23:15',
      timeZone: 'Etc/UTC',
    };
    for (const zenithMagnitude of [21.7, 20.5]) {
      const { world } = read({ place: { ...place, sky: { zenithMagnitude } } });
      expect(Math.abs((skyReading(world)?.zenithMagnitude ?? 0) - zenithMagnitude)).toBeLessThanOrEqual(0.15);
    }
  });

  it('counts how much of the core a wall hides: the segment of a circle under its top edge (abs 0.05)', () => {
    const place = hourPlace('2026-08-12T01:00');
    const { core } = skyReading(read({ place }).world) ?? {};
    if (!core) throw new Error('no sky');
    // a wide wall 10 m off, square to the way to the core
    const wallTo = (altitudeDegrees: number) => {
      const b = (core.bearingDegrees * Math.PI) / 180;
      const heightMetres = 1.5 + 10 * Math.tan((altitudeDegrees * Math.PI) / 180);
      return {
        id: 'wall',
        name: 'Wall',
        position: [10 * Math.sin(b), 10 * Math.cos(b), 0],
        turnDegrees: core.bearingDegrees,
        parts: [{ kind: 'box', widthMetres: 60, depthMetres: 0.01, heightMetres }],
      };
    };
    const hidden = (altitudeDegrees: number) =>
      skyReading(
        read({
          place,
          camera: cameraToward(core.bearingDegrees, core.altitudeDegrees),
          subjects: [wallTo(altitudeDegrees)],
        }).world,
      )?.core;
    expect(core.altitudeDegrees).toBeGreaterThan(15);
    // share of a disc under a chord x radii below its middle
    const under = (x: number) => (Math.acos(x) - x * Math.sqrt(1 - x * x)) / Math.PI;
    for (const below of [5, 0, -5]) {
      const seen = hidden(core.altitudeDegrees - below);
      expect(seen?.inPictureShare).toBe(1);
      expect(Math.abs((seen?.hiddenShare ?? Number.NaN) - under(below / 10))).toBeLessThanOrEqual(0.05);
      expect(seen?.hiddenBy).toBe('wall');
      if (below !== 0) expect(seen?.isInFrame).toBe(below > 0);
    }
    expect(hidden(core.altitudeDegrees - 12)).toMatchObject({ hiddenShare: 0, hiddenBy: null, isInFrame: true });
  });

  it('has none of the core in a picture that looks the other way', () => {
    const { world } = read({ place: hourPlace('2026-08-11T20:30'), camera: cameraToward(0, 0) });
    expect(skyLook(world)?.reading.core).toMatchObject({ isInFrame: false, inPictureShare: 0, hiddenShare: null });
  });
});

describe('moonReading', () => {
  const place = (northDegrees: number) =>
    hourPlace('2026-08-20T20:30', { northDegrees, sky: { extinctionMagnitudes: 0.172 } });
  it.each([0, 40])(
    'has bearings true and in the scene, and light on level ground by Allen’s law: scene’s north at %d degrees',
    (north) => {
      const { world, setup } = read({ place: place(north) });
      const moon = moonReading(world, setup.place);
      expect(Math.abs((moon?.altitudeDegrees ?? 0) - 56.03)).toBeLessThanOrEqual(0.03);
      expect(degreesApart(moon?.bearingDegrees ?? Number.NaN, 272.9)).toBeLessThanOrEqual(0.03);
      expect(degreesApart(moon?.sceneBearingDegrees ?? Number.NaN, 272.9 - north)).toBeLessThanOrEqual(0.03);
      expect(degreesApart(moon?.shadowBearingDegrees ?? Number.NaN, 92.9)).toBeLessThanOrEqual(0.03);
      expect(degreesApart(moon?.shadowSceneBearingDegrees ?? Number.NaN, 92.9 - north)).toBeLessThanOrEqual(0.03);
      // a post's shadow: similar triangles
      expect(moon?.shadowLengthPerHeight).toBeCloseTo(1 / Math.tan((56.03 * Math.PI) / 180), 2);
      // sky.md 3: 2.080e-2 lx on level ground, Allen's phase law and k = 0.172; Kasten and Young's air mass here (rel 2 %)
      expect(relativeError(moon?.levelLux ?? 0, 2.08e-2)).toBeLessThanOrEqual(0.02);
    },
  );

  it('is in the frame up to the picture’s edge, and not behind a wall', () => {
    const frameTo = (altitude: number, subjects: object[] = []) => {
      const { world, setup } = read({ place: place(0), camera: cameraToward(272.9, altitude), subjects });
      return moonReading(world, setup.place)?.isInFrame;
    };
    // half the height of the picture is atan(12 / 24) = 26.57 degrees; the moon is seen 56.03 degrees up
    expect(frameTo(56.03 - 26.4)).toBe(true);
    expect(frameTo(56.03 - 26.7)).toBe(false);
    expect(frameTo(40, [boxAt('wall', [-3, 0, 0], [0.5, 8, 12])])).toBe(false);
  });

  it('reads a plain moon too, its bearings from the scene’s north, and none where there is none', () => {
    const moonlight = { bearingDegrees: 100, altitudeDegrees: 30, illuminanceLux: 0.2 };
    const { world, setup } = read({ place: { northDegrees: 30, moonlight } });
    const moon = moonReading(world, setup.place);
    expect(moon?.bearingDegrees).toBeCloseTo(130, 9);
    expect(moon?.shadowSceneBearingDegrees).toBeCloseTo(280, 9);
    expect(moon?.shadowLengthPerHeight).toBeCloseTo(Math.sqrt(3), 9);
    expect(moon?.levelLux).toBeCloseTo(0.1, 9);
    expect(moonReading(read({ place: {} }).world, setup.place)).toBeNull();
  });
});

describe('unlitLevel', () => {
  it('is H S / 10 with H = 0.65 L t / N^2 of 18 % level ground (ISO 12232), moon and sky together (abs 0.01)', () => {
    const moonlight = { bearingDegrees: 100, altitudeDegrees: 30, illuminanceLux: 0.2 };
    const { worldFrame } = read({
      place: { moonlight, skylight: { illuminanceLux: 0.01 } },
      frame: { seconds: 15.5, aperture: 2.8, iso: 1600 },
    });
    const luminance = (0.18 * (0.2 * 0.5 + 0.01)) / Math.PI;
    // marked f/2.8 is exactly 2^1.5
    const ratio = ((0.65 * luminance * 15.5) / 8) * (1600 / 10);
    expect(Math.abs((unlitLevel(worldFrame) ?? Number.NaN) - Math.log2(ratio))).toBeLessThanOrEqual(0.01);
  });

  it('counts the sky of the hour as it lies on level ground: moonlit by 0.021 to 0.026 lx at the worked scene', () => {
    // direct 2.080e-2, Explanatory Supplement direct and sky 2.576e-2 (sky.md 3); the dark sky adds under 0.002
    const { worldFrame } = read({
      place: hourPlace('2026-08-20T20:30', { sky: { extinctionMagnitudes: 0.172 } }),
      frame: { seconds: 15.5, aperture: 2.8, iso: 1600 },
    });
    const levelOf = (lux: number) => Math.log2(((0.65 * ((0.18 * lux) / Math.PI) * 15.5) / 8) * 160);
    const level = unlitLevel(worldFrame) ?? Number.NaN;
    expect(level).toBeGreaterThan(levelOf(0.021));
    expect(level).toBeLessThan(levelOf(0.0276));
  });

  it('is null in the dark', () => {
    expect(unlitLevel(read({ place: { skylight: { illuminanceLux: 0 } } }).worldFrame)).toBeNull();
  });
});

describe('starReading under the sky of an hour', () => {
  it.each([
    [0, 20],
    [180, 33],
    [90, 40],
    [250, 60],
  ])(
    'looking to %d at %d degrees up: the middle trail is what a star there moves over the picture (rel 1 %)',
    (bearing, altitude) => {
      const { world, setup, frame } = read({
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
    const { world, setup, frame } = read({
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
    const plain = read({ place: {} });
    expect(starReading(plain.setup.camera, plain.frame, starViewOf(plain.world))).toMatchObject({
      declinationDegrees: 0,
      seen: null,
    });
    const down = read({ place: hourPlace('2026-08-11T20:30'), camera: cameraToward(0, -60) });
    expect(starViewOf(down.world)).toBeNull();
  });
});
