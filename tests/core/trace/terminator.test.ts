import { describe, expect, it } from 'vitest';
import { add, dot, normalize, scale, sub, type Vec3 } from '../../../core/geometry/vec.ts';
import { meterReceiver } from '../../../core/trace/meter.ts';
import { type SurfacePoint, surfaceAlong, surfaceOffset } from '../../../core/trace/surface-point.ts';
import type { Stage } from '../../../core/world/stage.ts';
import { discEmitter, halfSpaceBeam, stageWith, standing, subjectOf } from '../support/scenes.ts';

/** Middle of the things below, world axes; they hang 3 m over the ground and 6 m in front of the eye. */
const centre: Vec3 = [0, 3, -6];
const eye: Vec3 = [0, 3, 6];

/** A round thing of few sides, and the closed form of its outward direction. */
interface Round {
  readonly name: string;
  readonly part: object;
  readonly outward: (fromCentre: Vec3) => Vec3;
}
const rounds: readonly Round[] = [
  {
    name: 'a ball of 16 sides',
    part: { kind: 'sphere', position: [0, 6, 2], radiusMetres: 1, sides: 16 },
    outward: normalize,
  },
  {
    name: 'an egg of 24 sides',
    part: {
      kind: 'sphere',
      position: [0, 6, 1.8],
      radiusMetres: 1,
      radiusNorthMetres: 0.8,
      heightMetres: 2.4,
      sides: 24,
    },
    outward: ([x, y, z]) => normalize([x, y / 1.2 ** 2, z / 0.8 ** 2]),
  },
  {
    name: 'a post of 16 sides',
    part: { kind: 'cylinder', position: [0, 6, 1.8], radiusMetres: 1, heightMetres: 2.4, sides: 16 },
    outward: ([x, , z]) => normalize([x, 0, z]),
  },
];

/** Lamps so far off that their light is even and parallel within a part in a thousand. */
const lamps: readonly (readonly [name: string, place: Vec3])[] = [
  ['the east, level', add(centre, [2500, 0, 0])],
  ['behind and east', add(centre, [2200, 0, -1200])],
  ['above and east', add(centre, [2000, 1500, 300])],
];

/** Places seen over the middle of a thing, clear of its rim and lids. */
const seen = (stage: Stage): SurfacePoint[] => {
  const points: SurfacePoint[] = [];
  for (let row = 0; row < 61; row++)
    for (let column = 0; column < 241; column++) {
      const [x, y] = [0.95 * (column / 120 - 1), 0.6 * (row / 30 - 1)];
      const point = surfaceAlong(stage, eye, normalize(sub(add(centre, [x, y, 0]), eye)));
      if (point?.subject === 0) points.push(point);
    }
  return points;
};

/** Shadow rays from the flat triangle itself, as without Hanika’s origin. */
const naive = (point: SurfacePoint): SurfacePoint => ({
  ...point,
  place: point.position,
  shadowOrigin: add(point.position, scale(point.face, surfaceOffset(point.position))),
});

/**
 * Departures from Lambert’s cosine law on the true surface, max(cos, 0), as shares of the light straight on. And how
 * many places that should be lit by more than a fiftieth are dark.
 */
const departures = (stage: Stage, lamp: Vec3, outward: Round['outward'], points: readonly SurfacePoint[]) => {
  const source = standing(lamp, centre, discEmitter(0, halfSpaceBeam));
  const facing = {
    place: centre,
    shadowOrigin: add(centre, scale(normalize(sub(lamp, centre)), 3)),
    normal: normalize(sub(lamp, centre)),
  };
  const full = meterReceiver(stage, source, facing, 1);
  let [most, falselyDark] = [0, 0];
  for (const point of points) {
    const cosine = Math.max(dot(outward(sub(point.position, centre)), normalize(sub(lamp, point.position))), 0);
    const light = meterReceiver(stage, source, point, 1) / full;
    most = Math.max(most, Math.abs(light - cosine));
    if (cosine > 0.02 && light === 0) falselyDark++;
  }
  return { most, falselyDark };
};

// Lambert 1760: irradiance falls with the cosine of the angle to the surface, to nothing at the terminator
describe.each(rounds)('light that grazes $name', ({ part, outward }) => {
  const stage = stageWith(subjectOf('thing', [part]));
  const points = seen(stage);

  it.each(lamps)(
    'from %s falls as on the true surface (1 % of the light straight on), nowhere falsely dark',
    (_, lamp) => {
      expect(points.length).toBeGreaterThan(10_000);
      const { most, falselyDark } = departures(stage, lamp, outward, points);
      console.log(`largest departure from max(cos, 0): ${(most * 100).toFixed(1)} %`);
      expect(falselyDark).toBe(0);
      expect(most).toBeLessThanOrEqual(0.01);
    },
  );
});

describe('the check itself', () => {
  it.each(rounds)(
    'finds the dark steps on $name that shadow rays from its flat triangles make',
    ({ part, outward }) => {
      const stage = stageWith(subjectOf('thing', [part]));
      const found = lamps.map(([, lamp]) => departures(stage, lamp, outward, seen(stage).map(naive)));
      expect(Math.max(...found.map(({ most }) => most))).toBeGreaterThan(0.1);
      expect(Math.max(...found.map(({ falselyDark }) => falselyDark))).toBeGreaterThan(50);
    },
  );
});
