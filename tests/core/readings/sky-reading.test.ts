import { describe, expect, it } from 'vitest';
import { skyLook, skyReading } from '../../../core/readings/sky-reading.ts';
import { degreesApart } from '../../../core/units/angle.ts';
import { cameraToward, hourPlace } from '../support/hours.ts';
import { readNight } from '../support/read-night.ts';

describe('skyReading', () => {
  // positions: shared/reference/sky.md, section 3, held there against Meeus's formulas by another library
  it('tells sun, moon and core of the worked scene by true bearings, whatever the scene’s north (0.03 degrees)', () => {
    for (const northDegrees of [0, 120]) {
      const { world } = readNight({ place: hourPlace('2026-08-11T20:30', { northDegrees }) });
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
    expect(skyReading(readNight({ place: {} }).world)).toBeNull();
    expect(
      skyReading(readNight({ place: hourPlace('2026-08-11T20:30', { timeZone: 'Nowhere/None' }) }).world),
    ).toBeNull();
  });

  it.each([
    ['17:30', 'day'],
    ['17:45', 'civil twilight'],
    ['18:10', 'nautical twilight'],
    ['18:40', 'astronomical twilight'],
    ['19:00', 'dark'],
  ])('names the light at %s: %s (sunset 17:33, dark from 18:57)', (time, light) => {
    expect(skyReading(readNight({ place: hourPlace(`2026-08-11T${time}`) }).world)?.sun.light).toBe(light);
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
      const { world } = readNight({ place: { ...place, sky: { zenithMagnitude } } });
      expect(Math.abs((skyReading(world)?.zenithMagnitude ?? 0) - zenithMagnitude)).toBeLessThanOrEqual(0.15);
    }
  });

  it('counts how much of the core a wall hides: the segment of a circle under its top edge (abs 0.05)', () => {
    const place = hourPlace('2026-08-12T01:00');
    const { core } = skyReading(readNight({ place }).world) ?? {};
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
        readNight({
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
      expect(seen?.hiddenBy).toEqual({ kind: 'subject', subjectId: 'wall' });
      if (below !== 0) expect(seen?.isInFrame).toBe(below > 0);
    }
    expect(hidden(core.altitudeDegrees - 12)).toMatchObject({ hiddenShare: 0, hiddenBy: null, isInFrame: true });
  });

  it('has none of the core in a picture that looks the other way', () => {
    const { world } = readNight({ place: hourPlace('2026-08-11T20:30'), camera: cameraToward(0, 0) });
    expect(skyLook(world)?.reading.core).toMatchObject({ isInFrame: false, inPictureShare: 0, hiddenShare: null });
  });
});
