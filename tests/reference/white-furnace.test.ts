import { describe, it } from 'vitest';
import { cameraView } from '../../core/camera/camera-view.ts';
import { seededRandom } from '../../core/geometry/random.ts';
import { add, scale, type Vec3 } from '../../core/geometry/vec.ts';
import { evenBeam } from '../../core/photometry/beam.ts';
import type { Emitter } from '../../core/photometry/emitter.ts';
import { bounceSample } from '../../core/trace/bounce.ts';
import { irradianceSample } from '../../core/trace/irradiance.ts';
import { traceLayers } from '../../core/trace/layer.ts';
import { type SurfacePoint, surfaceAlong } from '../../core/trace/surface-point.ts';
import { stageWith, standing, subjectOf } from '../core/support/scenes.ts';
import { accuracySection } from './support/accuracy.ts';

const { check } = accuracySection('White furnace');
const source = 'geometric series of a closed diffuse room, conservation of energy, first principles';
const bulb: Emitter = { shape: 'point', halfWidthMetres: 0, halfHeightMetres: 0, beam: evenBeam };

// In a sphere every spot lights every other alike, so each bounce brings exactly rho times the light before it.
describe('a closed white globe of 4 m radius, lit from its middle', () => {
  const radius = 4;
  const middle: Vec3 = [0, 20 + radius, 0];
  const view = cameraView({
    position: [1, middle[1] - 0.5, 1.5],
    aim: [-2, middle[1] + 1, -3],
    rollRadians: 0,
    sensorWidthMm: 36,
    sensorHeightMm: 24,
    focalLengthMm: 14,
  });

  it.each([0.3, 0.5, 0.9])(
    'reflectance %d: total light over direct light is the series (0.3 %, its flat faces)',
    (rho) => {
      const globe = subjectOf('globe', [{ kind: 'sphere', radiusMetres: radius, sides: 96 }], {
        position: [0, 0, 20],
        finish: { reflectance: rho },
      });
      const stage = stageWith(globe);
      const lamp = standing(middle, add(middle, [0, -1, 0]), bulb);
      const mean = (bounces: 0 | 1 | 2) => {
        const [layer = new Float64Array()] = traceLayers(
          stage,
          view,
          [lamp],
          { width: 12, height: 8, samples: 16 },
          bounces,
        );
        return layer.reduce((sum, v) => sum + v, 0) / layer.length;
      };
      const direct = mean(0);
      check({
        id: `furnace ${rho}`,
        claim: `luminance of a globe of reflectance ${rho} by direct light`,
        source: 'rho E / pi with E = Phi / 4 pi R^2, first principles',
        unit: 'cd/m2 per lm',
        expected: rho / (4 * Math.PI ** 2 * radius ** 2),
        ours: direct,
        tolerance: { relative: 0.003 },
      });
      for (const [bounces, series] of [
        [1, 1 + rho],
        [2, 1 + rho + rho ** 2],
      ] as const)
        check({
          id: `furnace ${rho}`,
          claim: `light in a globe of reflectance ${rho} with ${bounces} bounce${bounces > 1 ? 's' : ''}, over direct light`,
          source,
          unit: '',
          expected: series,
          ours: mean(bounces) / direct,
          tolerance: { relative: 0.003 },
        });
    },
  );
});

// In a room of any shape the light that lands in all is the lamp's flux, then rho times that, then rho squared.
describe('a closed room 5 x 4 x 3 m, lit off its middle', () => {
  const size: Vec3 = [5, 3, 4];
  const low: Vec3 = [-2.5, 20, -2];
  const rho = 0.6;
  const count = 30_000;

  it(`reflectance ${rho}: flux on all walls by direct light, one and two bounces (3 standard errors of ${count} samples)`, () => {
    const room = subjectOf('room', [{ kind: 'box', widthMetres: 5, depthMetres: 4, heightMetres: 3 }], {
      position: [0, 0, 20],
      finish: { reflectance: rho },
    });
    const stage = stageWith(room);
    const place: Vec3 = [1.2, 21, 0.7];
    const lamp = standing(place, add(place, [0, -1, 0]), bulb);
    const random = seededRandom(4711);
    const area = 2 * (size[0] * size[1] + size[1] * size[2] + size[0] * size[2]);
    const walls = [0, 1, 2].flatMap((axis) => [0, 1].map((end) => ({ axis, end })));
    const wallArea = (axis: number) => (size[(axis + 1) % 3] as number) * (size[(axis + 2) % 3] as number);

    /** A spot on the walls, every square centimetre as likely. */
    const spot = (): SurfacePoint => {
      let pick = random() * area;
      const wall = walls.find(({ axis }) => {
        pick -= wallArea(axis);
        return pick <= 0;
      }) as (typeof walls)[number];
      const inner = [0, 1, 2].map((axis) => {
        const share = axis === wall.axis ? 0.5 : 0.0005 + 0.999 * random();
        return (low[axis] as number) + share * (size[axis] as number);
      }) as unknown as Vec3;
      const outward = [0, 1, 2].map((axis) => (axis === wall.axis ? 2 * wall.end - 1 : 0)) as unknown as Vec3;
      return surfaceAlong(stage, inner, scale(outward, 1)) as SurfacePoint;
    };
    const samples = [0, 1, 2].map(() => ({ sum: 0, squares: 0 }));
    for (let n = 0; n < count; n++) {
      const surface = spot();
      const middle = { u: 0.5, v: 0.5, time: 0.5 };
      const numbers = [0, 1].map(() => ({ ...middle, way: [random(), random()] as const }));
      const direct = irradianceSample(stage, lamp, surface, middle);
      const [one, two] = [1, 2].map((bounces) => bounceSample(stage, lamp, surface, bounces as 1 | 2, numbers)[0]);
      // luminance sent on back to the irradiance that came
      const landed = [direct, ((one as number) * Math.PI) / rho, (((two as number) - (one as number)) * Math.PI) / rho];
      landed.forEach((lux, i) => {
        const flux = lux * area;
        const into = samples[i] as { sum: number; squares: number };
        into.sum += flux;
        into.squares += flux ** 2;
      });
    }
    samples.forEach(({ sum, squares }, bounce) => {
      const mean = sum / count;
      check({
        id: 'room',
        claim: `flux that lands on the walls of a closed room after ${bounce} bounces, per lumen of the lamp`,
        source,
        unit: 'lm',
        expected: rho ** bounce,
        ours: mean,
        tolerance: { absolute: 3 * Math.sqrt((squares / count - mean ** 2) / count) },
      });
    });
  });
});
