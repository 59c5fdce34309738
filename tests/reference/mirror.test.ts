import { describe, expect, it } from 'vitest';
import { type CameraView, cameraView, projectPoint, viewRay } from '../../core/camera/camera-view.ts';
import { add, dot, normalize, scale, sub, type Vec3 } from '../../core/geometry/vec.ts';
import { evenBeam } from '../../core/photometry/beam.ts';
import type { Emitter } from '../../core/photometry/emitter.ts';
import { finish } from '../../core/setup/schema/fields.ts';
import type { Subject } from '../../core/setup/schema/setup.ts';
import { traceLayers } from '../../core/trace/layer.ts';
import { buildStage, type Stage } from '../../core/world/stage.ts';
import type { Source } from '../../core/world/world.ts';
import { standing, subjectOf } from '../core/support/scenes.ts';
import { accuracySection } from './support/accuracy.ts';

const { check } = accuracySection('Mirrors');
const size = { width: 96, height: 64, samples: 8 };
const view = cameraView({
  position: [0, 1.5, 2],
  aim: [0, 0, -5],
  rollRadians: 0,
  sensorWidthMm: 36,
  sensorHeightMm: 24,
  focalLengthMm: 35,
});
const waterIndex = 1.333;
const water = finish.parse({ reflectance: 0, gloss: 1, refractiveIndex: waterIndex });
const pondWith = (...subjects: Subject[]): Stage => buildStage({ finish: water, relief: [] }, subjects);
/** Where a thing stands in the water: as far under it as the thing is over it. */
const mirrored = ([x, y, z]: Vec3): Vec3 => [x, -y, z];

/** Fresnel's share by the sine and tangent laws (Hecht eqs. 4.42 and 4.43). */
const waterShare = (incidence: number): number => {
  const inside = Math.asin(Math.sin(incidence) / waterIndex);
  const across = (Math.sin(incidence - inside) / Math.sin(incidence + inside)) ** 2;
  return (across + (Math.tan(incidence - inside) / Math.tan(incidence + inside)) ** 2) / 2;
};

const trace = (stage: Stage, source: Source, from: CameraView = view) =>
  traceLayers(stage, from, [source], size)[0] as Float64Array;
const pixelOf = (point: Vec3) => {
  const [x, y] = projectPoint(view, point) as readonly [number, number];
  return [x * size.width, y * size.height] as const;
};
const valueAt = (layer: Float64Array, [x, y]: readonly [number, number]) =>
  layer[(Math.floor(y) * size.width + Math.floor(x)) * 3] as number;
/** Middle of all that is brighter than a share of the brightest, in the rows below one. */
const middleBelow = (layer: Float64Array, row: number, share: number): readonly [number, number] => {
  let [x, y, sum] = [0, 0, 0];
  const from = Math.ceil(row) * size.width;
  const most = layer.subarray(from * 3).reduce((top, v) => Math.max(top, v), 0);
  for (let p = from; p < size.width * size.height; p++) {
    const v = layer[p * 3] as number;
    if (v < share * most) continue;
    [x, y, sum] = [x + v * ((p % size.width) + 0.5), y + v * (Math.floor(p / size.width) + 0.5), sum + v];
  }
  return [x / sum, y / sum];
};

const inPlace = (id: string, what: string, layer: Float64Array, point: Vec3, share: number) => {
  const expected = pixelOf(mirrored(point));
  const found = middleBelow(layer, expected[1] - 12, share);
  check({
    id,
    claim: `how far ${what} lies in the picture from where its mirror image belongs`,
    source: 'plane mirror: as far under the water as the thing is over it, first principles',
    unit: 'px',
    expected: 0,
    ours: Math.hypot(found[0] - expected[0], found[1] - expected[1]),
    tolerance: { absolute: 1 },
  });
};

/** A dark ball before the mirrored sky: every pixel of its outline against a true ball under the water. */
const outlineInPlace = (place: Vec3, radius: number) => {
  const ball = subjectOf(
    'ball',
    [{ kind: 'sphere', position: [place[0], -place[2], place[1] - radius], radiusMetres: radius, sides: 96 }],
    { finish: { reflectance: 0 } },
  );
  const layer = trace(pondWith(ball), { kind: 'sky' });
  let [worst, inside] = [0, 0];
  for (let y = 0; y < size.height; y++)
    for (let x = 0; x < size.width; x++) {
      const ray = viewRay(view, (x + 0.5) / size.width, (y + 0.5) / size.height, 0.5, 0.5);
      const offset = sub(mirrored(place), ray.origin);
      const along = dot(offset, ray.direction);
      const gap = Math.sqrt(dot(offset, offset) - along ** 2) - radius;
      const open = waterShare(Math.acos(-ray.direction[1])) / Math.PI;
      // the ball itself hides some of the water
      const direct = sub(place, ray.origin);
      const isHidden = Math.sqrt(dot(direct, direct) - dot(direct, ray.direction) ** 2) < radius * 1.1;
      if (ray.direction[1] > -0.02 || isHidden) continue;
      const isBall = (layer[(y * size.width + x) * 3] as number) < open / 2;
      const pixels = (Math.abs(gap) / (along * (2 * view.tanHalfWidth))) * size.width;
      if (gap < 0) inside++;
      if (isBall !== gap < 0) worst = Math.max(worst, pixels);
    }
  expect(inside).toBeGreaterThan(40);
  check({
    id: `ball ${place}`,
    claim: 'how far the outline of a ball in water lies from where that of its mirror image belongs, at worst',
    source: 'plane mirror: as far under the water as the thing is over it, first principles',
    unit: 'px',
    expected: 0,
    ours: worst,
    tolerance: { absolute: 1 },
  });
};

describe('still water', () => {
  const source = `Fresnel’s sine and tangent laws with Snell’s law for index ${waterIndex}`;

  it.each([[[0.6, 0.8, -4]], [[-1.2, 0.4, -2.5]], [[1.5, 1.2, -9]]] as [Vec3][])(
    'shows a lantern at %j in its place, as bright as Fresnel says (1 px, 1 %)',
    (place) => {
      const radius = 0.12;
      const globe: Emitter = { shape: 'sphere', halfWidthMetres: radius, halfHeightMetres: 0, beam: evenBeam };
      const layer = trace(pondWith(), standing(place, add(place, [0, -1, 0]), globe));
      inPlace(`lantern ${place}`, 'a lantern in the water', layer, place, 0.3);
      const [px, py] = pixelOf(mirrored(place)).map((v) => Math.floor(v) + 0.5) as [number, number];
      const way = viewRay(view, px / size.width, py / size.height, 0.5, 0.5).direction;
      const bare = 1 / (4 * Math.PI ** 2 * radius ** 2);
      check({
        id: `lantern ${place}`,
        claim: 'luminance of a lantern seen in water over that of the lantern',
        source,
        unit: '',
        expected: waterShare(Math.acos(-way[1])),
        ours: valueAt(layer, pixelOf(mirrored(place))) / bare,
        tolerance: { relative: 0.02 },
      });
    },
  );

  it.each([
    [[0, 0.9, -4.5], 0.5],
    [[-1.5, 1.6, -6], 0.7],
  ] as [Vec3, number][])(
    'shows a white ball at %j lit from the camera’s side in its place (1 px, 2 %)',
    (place, radius) => {
      const ball = subjectOf(
        'ball',
        [{ kind: 'sphere', position: [place[0], -place[2], place[1] - radius], radiusMetres: radius, sides: 96 }],
        { finish: { reflectance: 0.9 } },
      );
      const lampAt: Vec3 = [1, 2, 3];
      const bulb: Emitter = { shape: 'point', halfWidthMetres: 0, halfHeightMetres: 0, beam: evenBeam };
      const layer = trace(pondWith(ball), standing(lampAt, [0, 0, 0], bulb));
      // the spot of the ball that the middle of the mirror image shows, by geometry on a true ball
      const [px, py] = pixelOf(mirrored(place));
      const ray = viewRay(view, (Math.floor(px) + 0.5) / size.width, (Math.floor(py) + 0.5) / size.height, 0.5, 0.5);
      const onWater = add(ray.origin, scale(ray.direction, -ray.origin[1] / ray.direction[1]));
      const up = mirrored(ray.direction);
      const offset = sub(onWater, place);
      const along = dot(offset, up);
      const spot = add(onWater, scale(up, -along - Math.sqrt(along ** 2 - dot(offset, offset) + radius ** 2)));
      const toLamp = sub(lampAt, spot);
      const distance2 = dot(toLamp, toLamp);
      const cos = dot(normalize(toLamp), scale(sub(spot, place), 1 / radius));
      check({
        id: `ball ${place}`,
        claim: 'luminance of a lit white ball seen in water',
        source: `${source}; rho I cos / (pi d^2)`,
        unit: 'cd/m2 per lm',
        expected: (waterShare(Math.acos(up[1])) * 0.9 * cos) / (4 * Math.PI ** 2 * distance2),
        ours: valueAt(layer, [px, py]),
        tolerance: { relative: 0.02 },
      });
      outlineInPlace(place, radius);
    },
  );

  it('shows the open sky as Fresnel says, and more of it the lower one looks (0.5 %)', () => {
    const layer = trace(pondWith(), { kind: 'sky' });
    for (const row of [20, 30, 45, 60]) {
      const ray = viewRay(view, 0.5, (row + 0.5) / size.height, 0.5, 0.5);
      check({
        id: `row ${row}`,
        claim: 'luminance of open water under an even sky over that of the sky',
        source,
        unit: '',
        expected: waterShare(Math.acos(-ray.direction[1])),
        ours: valueAt(layer, [size.width / 2, row]) * Math.PI,
        tolerance: { relative: 0.01 },
      });
    }
  });
});

describe('a mirror in a closed white globe', () => {
  // the mirror shows the wall behind the eye, which is as bright everywhere
  it('shows direct and bounced light alike: metal of 80 % straight on, two bounces (1 %)', () => {
    const radius = 4;
    const middle: Vec3 = [0, 24, 0];
    const globe = subjectOf('globe', [{ kind: 'sphere', radiusMetres: radius, sides: 96 }], {
      position: [0, 0, 20],
      finish: { reflectance: 0.5 },
    });
    const mirror = subjectOf('mirror', [{ kind: 'plane', widthMetres: 0.4, depthMetres: 0.4 }], {
      position: [0, 0, 22],
      finish: { reflectance: 0.8, metal: true, gloss: 1 },
    });
    const look = (aim: Vec3) =>
      cameraView({
        position: [0.4, 24.6, 0.3],
        aim,
        rollRadians: 0,
        sensorWidthMm: 36,
        sensorHeightMm: 24,
        focalLengthMm: 700,
      });
    const bulb: Emitter = { shape: 'point', halfWidthMetres: 0, halfHeightMetres: 0, beam: evenBeam };
    const lamp = standing(middle, add(middle, [0, -1, 0]), bulb);
    const stage = buildStage({ finish: water, relief: [] }, [globe, mirror]);
    const mean = (aim: Vec3, bounces: 0 | 2) => {
      const [layer = new Float64Array()] = traceLayers(
        stage,
        look(aim),
        [lamp],
        { width: 6, height: 4, samples: 512 },
        bounces,
      );
      return layer.reduce((sum, v) => sum + v, 0) / layer.length;
    };
    const inMirror: Vec3 = [0, 22, 0];
    // a hair under all of it: at 13 degrees from straight on Schlick's share is 0.8 + 0.2 (1 - cos)^5 = 0.8
    for (const bounces of [0, 2] as const)
      check({
        id: `${bounces} bounces`,
        claim: `luminance of a wall seen in a mirror over that of the wall, ${bounces} bounces`,
        source: 'law of reflection; Schlick 1994',
        unit: '',
        expected: 0.8,
        ours: mean(inMirror, bounces) / mean([-3, 25, 2], bounces),
        tolerance: { relative: 0.015 },
      });
  });
});
