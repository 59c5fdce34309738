import { describe, expect, it } from 'vitest';
import { framesOf, told } from '../support/blends.ts';
import { cameraToward, hourPlace } from '../support/hours.ts';
import { reportOf, toldOf, wallAt } from '../support/sky-night.ts';

describe('core-hidden', () => {
  const place = hourPlace('2026-08-12T01:00');
  const { core } = reportOf({ place }).sky ?? {};
  const [bearing, altitude] = [core?.bearingDegrees ?? 0, core?.altitudeDegrees ?? 0];
  const behind = (top: number, camera = cameraToward(bearing, altitude), when = place) =>
    toldOf(reportOf({ place: when, camera, subjects: [wallAt(bearing, top)] }), 'core-hidden');

  it('is told where a wall hides more than half of it, and goes where it hides less', () => {
    expect(behind(altitude + 1)).toMatchObject({ severity: 'note', limit: 0.5 });
    expect(behind(altitude + 1)?.message).toMatch(/core of the Milky Way, \d+° up, is behind “Wall”: \d\d % of it/);
    expect(behind(altitude - 1)).toBeUndefined();
  });

  it('blames the land where boulders of the ground hide it and no subject does', () => {
    // 2.8 degrees up; boulders 3 m high, 2 to 18 m before a lens at 1.5 m, reach 4.8 degrees and more
    const low = hourPlace('2026-02-20T01:45');
    const at = reportOf({ place: low }).sky?.core;
    const turn = ((at?.bearingDegrees ?? 0) * Math.PI) / 180;
    const boulders = {
      kind: 'stones',
      count: 400,
      heightMetres: [3, 3],
      centre: [10 * Math.sin(turn), 10 * Math.cos(turn)],
      radiusMetres: 8,
    };
    const messageOver = (relief: object[]) =>
      told(
        framesOf([{ seconds: 15 }], {
          place: low,
          camera: cameraToward(at?.bearingDegrees ?? 0, at?.altitudeDegrees ?? 0),
          ground: { relief },
        }),
        'core-hidden',
      )[0]?.message;
    expect(messageOver([boulders])).toMatch(/core of the Milky Way, 3° up, is behind the land: \d+ % of it/);
    expect(messageOver([])).toBeUndefined();
  });

  it('says nothing where the camera looks elsewhere, and by day', () => {
    expect(behind(altitude + 1, cameraToward(bearing + 90, altitude))).toBeUndefined();
    expect(behind(80, cameraToward(bearing, 40), hourPlace('2026-08-11T13:00'))).toBeUndefined();
  });
});

describe('glow-over-core', () => {
  const place = (luminance: number, more: object = {}) =>
    hourPlace('2026-08-12T01:30', {
      glowDomes: [{ name: 'Smelter', bearingDegrees: 235, widthDegrees: 20, luminanceAt10DegreesCdM2: luminance }],
      ...more,
    });
  const { core } = reportOf({ place: place(0.001) }).sky ?? {};
  const camera = cameraToward(core?.bearingDegrees ?? 0, core?.altitudeDegrees ?? 0);
  const at = (luminance: number, looking = camera) =>
    toldOf(reportOf({ place: place(luminance), camera: looking }), 'glow-over-core');

  it('is told where the glow is brighter than the rest of the sky there, and goes where it is fainter', () => {
    // the town that is just told of, found by halving
    let [fainter, brighter] = [1e-5, 1];
    for (let n = 0; n < 14; n++) {
      const middle = Math.sqrt(fainter * brighter);
      if (at(middle)) brighter = middle;
      else fainter = middle;
    }
    const caution = at(brighter);
    expect(caution).toMatchObject({ severity: 'note', limit: 1 });
    expect(caution?.value).toBeGreaterThan(1);
    expect(caution?.value).toBeLessThan(1.01);
    expect(caution?.message).toMatch(/the glow of “Smelter” is 1\.0 times/);
    expect(at(fainter)).toBeUndefined();
    // the closed form of sky.md 4.7 at the core's height and bearing, against a dark sky there of 21.2 to 19.8
    // mag/arcsec2 (10.81e4 x 10^(-0.4 mu) cd/m2): the core on a dark sky, with the air of a low height
    const altitude = core?.altitudeDegrees ?? Number.NaN;
    const spread = Math.hypot(4.3 + 0.89 * altitude, 10);
    const turn = (core?.bearingDegrees ?? Number.NaN) - 235;
    const glow = (brighter * ((altitude + 6) / 16) ** -2.9) / (1 + (turn / spread) ** 2);
    const magnitude = -2.5 * Math.log10(glow / 10.81e4);
    expect(magnitude).toBeGreaterThan(19.8);
    expect(magnitude).toBeLessThan(21.2);
  });

  it('has a word for a town without a name', () => {
    const unnamed = place(1, {
      glowDomes: [{ name: '', bearingDegrees: 235, widthDegrees: 20, luminanceAt10DegreesCdM2: 1 }],
    });
    expect(toldOf(reportOf({ place: unnamed, camera }), 'glow-over-core')?.message).toContain('the glow of a town is');
  });

  it('says nothing where land stands before all of the core', () => {
    const walled = reportOf({ place: place(1), camera, subjects: [wallAt(core?.bearingDegrees ?? 0, 80)] });
    expect(toldOf(walled, 'glow-over-core')).toBeUndefined();
    expect(toldOf(walled, 'core-hidden')).toBeDefined();
  });

  it('says nothing without the core in the frame', () => {
    expect(at(1, cameraToward(60, 20))).toBeUndefined();
  });
});
