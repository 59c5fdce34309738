import { describe, expect, it } from 'vitest';
import { reportScheme } from '../../../core/cautions/setup-report.ts';
import type { Scheme } from '../../../core/setup/schema/setup.ts';
import { framesOf } from '../support/blends.ts';
import { cameraToward, hourPlace } from '../support/hours.ts';
import { reportOf, toldOf } from '../support/sky-night.ts';

describe('star-trails under the sky of an hour', () => {
  // 85 mm: 500 / 85 = 5.88 s, a third of a stop more 7.41 s. Round the pole the picture shows declinations from
  // 90 - atan(hypot(18, 12) / 85) = 75.7 on, where stars run at cos = 0.247 of that speed: 30.0 s
  const toward = (altitudeDegrees: number, seconds: number) =>
    toldOf(
      reportOf({
        place: {
          latitudeDegrees: 50,
          longitudeDegrees: 0,
          localTime: '2026-01-15T22:00',
          timeZone: 'Etc/UTC',
          sky: {},
        },
        camera: cameraToward(altitudeDegrees === 50 ? 0 : 180, altitudeDegrees, { focalLengthMm: 85 }),
        frame: { seconds },
      }),
      'star-trails',
    );
  it.each([
    [50, 29, false],
    [50, 31, true],
    // over the south at 40 degrees the equator culminates
    [40, 7.3, false],
    [40, 7.6, true],
  ])('%d degrees up, %d s: %s', (altitude, seconds, isTold) => {
    expect(toward(altitude, seconds) !== undefined).toBe(isTold);
  });
});

describe('shadows-disagree with the moon of the hour', () => {
  // the lamp stands 45 degrees to the right of a camera in the scene's south: at bearing 135 of the scene; the moon
  // truly at 272.9 (sky.md 3)
  const apart = (degrees: number) => {
    const setup = framesOf(
      [
        {
          seconds: 30,
          aperture: 2.8,
          iso: 800,
          focusMetres: 8,
          passes: [
            {
              id: 'pass',
              name: 'Pass',
              lampId: 'torch',
              levelPercent: 10,
              off: 4,
              waypoints: [{ position: [6 * Math.SQRT1_2, -6 * Math.SQRT1_2, 3.5], aim: [0, 0, 1] }],
            },
          ],
        },
      ],
      {
        place: hourPlace('2026-08-20T20:30', { northDegrees: 272.9 - (135 + degrees) + 360 * Number(degrees > 137) }),
        subjects: [
          { id: 'post', name: 'Post', parts: [{ kind: 'cylinder', radiusMetres: 0.3, heightMetres: 2, sides: 48 }] },
        ],
      },
    );
    return toldOf(reportScheme(setup, setup.schemes[0] as Scheme), 'shadows-disagree');
  };
  it('a stronger lamp is told over 90 degrees from it, and goes under them', () => {
    expect(apart(91)?.value).toBeCloseTo(91, 1);
    expect(apart(91)?.message).toMatch(/91° away from the one in moonlight/);
    expect(apart(89)).toBeUndefined();
  });
});
