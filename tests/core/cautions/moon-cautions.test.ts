import { describe, expect, it } from 'vitest';
import { framesOf, told, withBlend } from '../support/blends.ts';
import { cameraToward, hourPlace } from '../support/hours.ts';
import { reportOf, toldOf, wallAt } from '../support/sky-night.ts';

describe('moon-in-frame', () => {
  const place = hourPlace('2026-08-20T20:30');
  // sky.md 3: the moon at 272.90 degrees, seen 56.03 up; half the picture is atan(12 / 24) = 26.57 degrees high
  it('is told up to the edge of the picture, and goes past it', () => {
    const looking = (down: number) =>
      toldOf(reportOf({ place, camera: cameraToward(272.9, 56.03 - down) }), 'moon-in-frame');
    expect(looking(26.3)?.message).toMatch(
      /the moon is in the picture, 3\d pixels wide.*wait until it sets at \d\d:\d\d/,
    );
    expect(looking(26.8)).toBeUndefined();
  });

  it('goes behind land, with the moon down, and in a blend that takes no sky from the frame', () => {
    const camera = cameraToward(272.9, 40);
    expect(toldOf(reportOf({ place, camera }), 'moon-in-frame')).toBeDefined();
    expect(toldOf(reportOf({ place, camera, subjects: [wallAt(272.9, 57)] }), 'moon-in-frame')).toBeUndefined();
    expect(toldOf(reportOf({ place, camera, subjects: [wallAt(272.9, 55)] }), 'moon-in-frame')).toBeDefined();
    expect(toldOf(reportOf({ place: hourPlace('2026-08-11T20:30'), camera }), 'moon-in-frame')).toBeUndefined();
    const masked = (where: string) =>
      told(
        withBlend(framesOf([{ seconds: 15 }], { place, camera }), [{ frameId: 'frame-0', weight: 1, where }]),
        'moon-in-frame',
      );
    expect(masked('everything')).toHaveLength(1);
    expect(masked('ground')).toEqual([]);
  });

  // the half moon of 10 April 2026 (last quarter, from memory) follows the sun by 90 degrees and stands in the far south:
  // so it is up for over twelve hours, and sets after noon; three days before it sets two hours and more sooner
  it('asks for another night where the moon stays up until noon', () => {
    const waits = (day: string) => {
      const morning = hourPlace(`2026-04-${day}T03:00`);
      const { bearingDegrees = 0, altitudeDegrees = 0 } = reportOf({ place: morning }).sky?.moon ?? {};
      const toward = cameraToward(bearingDegrees, altitudeDegrees);
      return toldOf(reportOf({ place: morning, camera: toward }), 'moon-in-frame')?.message;
    };
    expect(waits('07')).toMatch(/or wait until it sets at 1[01]:\d\d\.$/);
    expect(waits('10')).toMatch(/or take another night: it stays up through this one\.$/);
  });

  it('is a warning where the sky round it is white on over a hundredth of the picture, and a note under it', () => {
    const glare = (seconds: number, iso: number) =>
      toldOf(
        reportOf({ place, camera: cameraToward(272.9, 50), frame: { seconds, iso, aperture: 2 } }),
        'moon-in-frame',
      );
    let kinds = new Set<string>();
    for (const [seconds, iso] of [
      [0.01, 100],
      [10, 1600],
      [10, 6400],
      [25, 12800],
    ] as const) {
      const caution = glare(seconds, iso);
      expect(caution?.severity).toBe((caution?.value ?? Number.NaN) > 0.01 ? 'warning' : 'note');
      expect(caution?.limit).toBe(0.01);
      kinds = kinds.add(caution?.severity ?? '');
    }
    expect([...kinds].sort()).toEqual(['note', 'warning']);
    expect(glare(0.01, 100)).toMatchObject({ value: 0 });
    expect(glare(0.01, 100)?.message).toMatch(/its disc is white/);
  });
});

describe('moon-washes-core', () => {
  /** The camera looks at the core. */
  const night = (localTime: string, more: object = {}) => {
    const place = hourPlace(localTime, more);
    const { core } = reportOf({ place }).sky ?? {};
    return reportOf({ place, camera: cameraToward(core?.bearingDegrees ?? 0, core?.altitudeDegrees ?? 0) });
  };
  it('is told night by night where the zenith is brighter than 20.5 mag/arcsec2, and goes where it is not', () => {
    const found = ['17', '18', '20', '21', '23', '26'].map((day) => {
      const report = night(`2026-08-${day}T20:30`);
      const { zenithMagnitude = Number.NaN, moon, core } = report.sky ?? {};
      expect([moon?.isUp, core?.isInFrame]).toEqual([true, true]);
      const caution = toldOf(report, 'moon-washes-core');
      expect(caution !== undefined).toBe(zenithMagnitude < 20.5);
      if (caution) expect(caution).toMatchObject({ severity: 'note', value: zenithMagnitude, limit: 20.5 });
      return caution !== undefined;
    });
    expect(new Set(found).size).toBe(2);
  });

  it('says when the moon is gone, or that it stays up until noon', () => {
    const says = (day: string) => toldOf(night(`2026-04-${day}T03:00`), 'moon-washes-core')?.message;
    expect(says('07')).toMatch(/It sets at 1[01]:\d\d: take the sky after that, or go without the Milky Way\.$/);
    expect(says('10')).toMatch(/It stays up through this night: take another, or go without the Milky Way\.$/);
  });

  it('blames no moon that is down, nor for a sky that towns make bright', () => {
    expect(toldOf(night('2026-08-11T20:30'), 'moon-washes-core')).toBeUndefined();
    expect(toldOf(night('2026-08-26T20:30'), 'moon-washes-core')?.message).toMatch(/% lit, washes.*instead of 21\.7/);
    expect(toldOf(night('2026-08-26T20:30', { sky: { zenithMagnitude: 20.4 } }), 'moon-washes-core')).toBeUndefined();
  });
});
