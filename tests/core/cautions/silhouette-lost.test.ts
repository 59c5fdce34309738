import { describe, expect, it } from 'vitest';
import { reportOf, toldOf } from '../support/sky-night.ts';

describe('silhouette-lost', () => {
  /** An upright wall of 50 % under an even sky, its front lit by a moon so that it is so many stops from the sky. */
  const wall = (stops: number, more: object = {}, frame: object = {}) => {
    // r (E / 2 + M) = 2^-stops E, with r = 0.5: closed form
    const sky = 0.01;
    const moon = sky * (2 * 2 ** -stops - 0.5);
    return {
      camera: { position: [0, -10, 1.5], aim: [0, 0, 2.5], focalLengthMm: 24 },
      place: {
        skylight: { illuminanceLux: sky },
        moonlight: { bearingDegrees: 180, altitudeDegrees: 1, illuminanceLux: moon },
      },
      subjects: [
        {
          id: 'wall',
          name: 'Wall',
          finish: { reflectance: 0.5 },
          parts: [{ kind: 'box', widthMetres: 4, depthMetres: 1, heightMetres: 4 }],
        },
      ],
      frame: { seconds: 15, ...frame },
      ...more,
    };
  };

  it.each([
    [0.4, true],
    [-0.4, true],
    [0.65, false],
    [-0.65, false],
    [2, false],
  ])('the sky %d stops over a wall that no lamp lights: %s (limit 0.5)', (stops, isTold) => {
    const caution = toldOf(reportOf(wall(stops)), 'silhouette-lost');
    expect(caution !== undefined).toBe(isTold);
    if (caution) expect(caution).toMatchObject({ severity: 'note', limit: 0.5 });
    if (caution) expect(Math.abs((caution.value ?? Number.NaN) - Math.abs(stops))).toBeLessThanOrEqual(0.1);
  });

  it('goes with a lamp on the wall, with a rim, and where all is lost in the night', () => {
    const lit = (waypoints: object[]) => ({
      passes: [{ id: 'pass', name: 'Pass', lampId: 'torch', off: 4, waypoints }],
    });
    const front = lit([{ position: [0, -9, 2], aim: [0, 0, 2] }]);
    const rim = lit([{ position: [4, 4, 3], aim: [0, 0, 3] }]);
    expect(toldOf(reportOf(wall(0.1)), 'silhouette-lost')).toBeDefined();
    expect(toldOf(reportOf(wall(0.1, {}, front)), 'silhouette-lost')).toBeUndefined();
    expect(toldOf(reportOf(wall(0.1, {}, { iso: 50, aperture: 16 })), 'silhouette-lost')).toBeUndefined();
    const round = {
      subjects: [
        {
          id: 'wall',
          name: 'Tower',
          finish: { reflectance: 0.5 },
          parts: [{ kind: 'cylinder', radiusMetres: 1, heightMetres: 4, sides: 48 }],
        },
      ],
    };
    expect(toldOf(reportOf(wall(0.1, round)), 'silhouette-lost')?.message).toMatch(/“Tower” is as bright/);
    const rimmed = reportOf(wall(0.1, round, rim));
    expect(rimmed.frames[0]?.passes[0]?.rim.litShare).toBeGreaterThan(0.1);
    expect(toldOf(rimmed, 'silhouette-lost')).toBeUndefined();
  });
});
