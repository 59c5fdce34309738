import { describe, expect, it } from 'vitest';
import { cameraView, projectPoint } from '../../core/camera/camera-view.ts';
import { seededRandom } from '../../core/geometry/random.ts';
import { add, dot, normalize, sub, type Vec3 } from '../../core/geometry/vec.ts';
import { evenBeam } from '../../core/photometry/beam.ts';
import type { Emitter } from '../../core/photometry/emitter.ts';
import { facetLobe } from '../../core/photometry/facets.ts';
import { clearFresnel } from '../../core/photometry/fresnel.ts';
import { finish } from '../../core/setup/schema/fields.ts';
import { directLuminance, look } from '../../core/trace/direct-light.ts';
import { traceLayers } from '../../core/trace/layer.ts';
import { surfaceLuminance } from '../../core/trace/lit-surface.ts';
import { wayOn } from '../../core/trace/sheen.ts';
import { type SurfacePoint, surfaceAlong } from '../../core/trace/surface-point.ts';
import { buildStage, type Stage } from '../../core/world/stage.ts';
import type { Source } from '../../core/world/world.ts';
import { standing } from '../core/support/scenes.ts';
import { accuracySection } from './support/accuracy.ts';
import { lantern, panel, roundPanel, tube } from './support/lamps.ts';
import { gaussLegendre } from './support/quadrature.ts';

const { check } = accuracySection('Light in a sheen');
const bulb: Emitter = { shape: 'point', halfWidthMetres: 0, halfHeightMetres: 0, beam: evenBeam };
const intensity = 1 / (4 * Math.PI);
const index = 1.5;
/** Bare ground under a sheen; the finish's roughness is (1 - gloss)^2. */
const groundOf = (gloss: number, reflectance = 0): Stage =>
  buildStage({ finish: finish.parse({ reflectance, gloss, refractiveIndex: index }), relief: [] }, []);
const down: Vec3 = [0, -1, 0];
const middle = { u: 0.5, v: 0.5, time: 0.5 };

describe('a bulb over a glossy floor', () => {
  it.each([0.3, 0.6, 0.8, 0.9])(
    'gloss %d, eye and bulb straight over it: F0 I / (4 pi alpha^2 d^2) (rel 1e-6)',
    (gloss) => {
      const alpha = (1 - gloss) ** 2;
      for (const d of [1, 3]) {
        const surface = surfaceAlong(groundOf(gloss), [0, 2, 0], down) as SurfacePoint;
        check({
          id: `gloss ${gloss}`,
          claim: `luminance of the highlight, bulb ${d} m over the floor, seen from straight above`,
          source: 'lobe F D G / 4 with D = 1 / (pi alpha^2), G = 1 straight on: Walter et al. 2007, eqs. 20 and 33',
          unit: 'cd/m2 per lm',
          expected: (0.04 * intensity) / (4 * Math.PI * alpha ** 2 * d ** 2),
          ours: surfaceLuminance(groundOf(gloss), standing([0, d, 0], [0, 0, 0], bulb), surface, middle, 'shared')[0],
          tolerance: { relative: 1e-6 },
        });
      }
    },
  );

  it.each([[[0, 1, -6]], [[1.5, 0.5, -3]], [[-2, 2, -4]]] as [Vec3][])(
    'bulb at %j: the highlight lies where the angles in and out are the same (1 px)',
    (lamp) => {
      const size = { width: 96, height: 64, samples: 4 };
      const eye: Vec3 = [0, 1.5, 2];
      const view = cameraView({
        position: eye,
        aim: [0, 0, -2.5],
        rollRadians: 0,
        sensorWidthMm: 36,
        sensorHeightMm: 24,
        focalLengthMm: 30,
      });
      const [layer = new Float64Array()] = traceLayers(groundOf(0.9), view, [standing(lamp, [0, 0, 0], bulb)], size);
      let [x, y, sum] = [0, 0, 0];
      const most = layer.reduce((top, v) => Math.max(top, v), 0);
      for (let p = 0; p < size.width * size.height; p++) {
        const v = layer[p * 3] as number;
        if (v > most / 2)
          [x, y, sum] = [x + v * ((p % size.width) + 0.5), y + v * (Math.floor(p / size.width) + 0.5), sum + v];
      }
      // by similar triangles between the eye and the lamp's mirror image
      const share = eye[1] / (eye[1] + lamp[1]);
      const spot: Vec3 = [eye[0] + (lamp[0] - eye[0]) * share, 0, eye[2] + (lamp[2] - eye[2]) * share];
      const [px, py] = projectPoint(view, spot) as readonly [number, number];
      check({
        id: `bulb ${lamp}`,
        claim: 'how far the highlight lies in the picture from where the angles in and out are the same',
        source: 'law of reflection, first principles',
        unit: 'px',
        expected: 0,
        ours: Math.hypot(x / sum - px * size.width, y / sum - py * size.height),
        tolerance: { absolute: 1 },
      });
    },
  );
});

/** Mean of all that the eye gets of a source along one ray, and its standard error. */
const meanAlong = (stage: Stage, source: Source, eye: Vec3, place: Vec3, samples: number) => {
  const random = seededRandom(31);
  let [sum, squares] = [0, 0];
  for (let n = 0; n < samples; n++) {
    const ray = { origin: eye, direction: normalize(sub(place, eye)) };
    const seen = look(stage, ray, [random(), random()]);
    const value = directLuminance(stage, source, seen, { u: random(), v: random(), time: 0.5 })[0];
    [sum, squares] = [sum + value, squares + value ** 2];
  }
  const mean = sum / samples;
  return { mean, error: Math.sqrt((squares / samples - mean ** 2) / samples) };
};

describe('large lamps over a glossy floor', () => {
  const nodes = gaussLegendre(160);
  const eye: Vec3 = [0, 1, 2];
  /** The lobe integrated over a rectangle that looks straight down from a height, off toward north. */
  const overPanel = (alpha: number, height: number, middleZ: number, width: number, depth: number): number => {
    const toEye = normalize(eye);
    let sum = 0;
    for (const a of nodes)
      for (const b of nodes) {
        const spot: Vec3 = [(a.at - 0.5) * width, height, middleZ + (b.at - 0.5) * depth];
        const d2 = dot(spot, spot);
        const toLight = normalize(spot);
        const half = normalize(add(toEye, toLight));
        const lobe = facetLobe(alpha, [0, 1, 0], toEye, toLight) * clearFresnel(index, dot(half, toEye));
        // luminance of 1 lm over an even panel, cosines at both ends
        sum += a.weight * b.weight * lobe * (1 / (Math.PI * width * depth)) * toLight[1] ** 2 * ((width * depth) / d2);
      }
    return sum;
  };

  it.each([
    [0.5, 0],
    [0.7, -2],
    [0.8, -2.5],
    [0.8, -1],
  ])(
    'gloss %d, a panel 1.2 x 0.8 m, 1 m up, %d m to the north: the lobe over all of it (3 standard errors + 0.2 %)',
    (gloss, z) => {
      const alpha = (1 - gloss) ** 2;
      const source = standing([0, 1, z], [0, 0, z], panel(1.2, 0.8));
      const { mean, error } = meanAlong(groundOf(gloss), source, eye, [0, 0, 0], 20_000);
      // a panel that looks straight down has its width along north
      const expected = overPanel(alpha, 1, z, 0.8, 1.2);
      check({
        id: `gloss ${gloss}, ${z} m`,
        claim: 'luminance of a panel’s sheen on a floor',
        source: 'Gauss and Legendre’s rule over the panel; lobe of Walter et al. 2007, eq. 20',
        unit: 'cd/m2 per lm',
        expected,
        ours: mean,
        tolerance: { absolute: 3 * error + 0.002 * expected },
      });
    },
  );

  // a lobe that lies inside the lamp's mirror image shows the lamp's luminance times Fresnel's share
  it.each([
    ['a panel', panel(1.6, 1.6), [0, 1, -2], 1 / (Math.PI * 1.6 ** 2)],
    ['a round panel', roundPanel(0.8), [0, 1, -2], 1 / (Math.PI ** 2 * 0.8 ** 2)],
    ['a lantern', lantern(0.5), [0, 1, -2], 1 / (4 * Math.PI ** 2 * 0.5 ** 2)],
    ['a tube', tube(3, 0.4), [0, 1, -2], 1 / (4 * Math.PI ** 2 * 1.5 * 0.4)],
  ] as [string, Emitter, Vec3, number][])(
    'the smoothest sheen shows %s as a mirror would (3 standard errors + 3 %), without specks',
    (name, emitter, at, bare) => {
      const source = standing(at, [at[0], 0, at[2]], emitter);
      const samples = 4000;
      const { mean, error } = meanAlong(groundOf(0.95), source, eye, [0, 0, 0], samples);
      check({
        id: name,
        claim: `luminance of ${name} in the smoothest sheen over that of the lamp`,
        source: 'Fresnel’s equations at 63.4 degrees, first principles',
        unit: '',
        expected: clearFresnel(index, 1 / Math.sqrt(5)),
        ours: mean / bare,
        tolerance: { absolute: (3 * error) / bare + 0.03 * clearFresnel(index, 1 / Math.sqrt(5)) },
      });
      // one sample is not worth ten: both ways of finding the lamp together are never far above what a mirror shows
      expect((error * Math.sqrt(samples)) / mean).toBeLessThan(1.5);
    },
  );
});

describe('open sky on a white floor under a sheen', () => {
  it.each([0.3, 0.7, 0.9, 1])(
    'gloss %d: as bright as the sky from anywhere: nothing lost, nothing made (1 %)',
    (gloss) => {
      for (const degrees of [0, 45, 70, 85]) {
        const eye: Vec3 = [0, 2 * Math.cos((degrees * Math.PI) / 180), 2 * Math.sin((degrees * Math.PI) / 180)];
        const { mean, error } = meanAlong(groundOf(gloss, 1), { kind: 'sky' }, eye, [0, 0, 0], 4000);
        check({
          id: `gloss ${gloss}`,
          claim: `luminance of a white floor of gloss ${gloss} under an even sky, over the sky’s, seen from ${degrees} degrees`,
          source: 'conservation of energy, first principles',
          unit: '',
          expected: 1,
          ours: mean * Math.PI,
          tolerance: { absolute: 0.006 + 3 * error * Math.PI },
        });
      }
    },
  );
});

describe('a sheen whose shading normal leans', () => {
  it('never sends the eye’s ray under the face, 20,000 leans and looks (seed 12)', () => {
    const random = seededRandom(12);
    const stages = [groundOf(1), groundOf(0.9), groundOf(0.5)];
    let ways = 0;
    for (let n = 0; n < 20_000; n++) {
      const stage = stages[n % 3] as Stage;
      const turn = 2 * Math.PI * random();
      const lean = 0.6 * random();
      // grazing looks most of all
      const height = 2 * random() ** 4 + 1e-3;
      const flat = surfaceAlong(stage, [0, height, 2], normalize([0.1, -height, -2])) as SurfacePoint;
      const normal: Vec3 = [Math.sin(lean) * Math.cos(turn), Math.cos(lean), Math.sin(lean) * Math.sin(turn)];
      const sheen = flat.finish.sheen;
      const on = sheen && wayOn({ ...flat, normal }, sheen, n % 2 ? [random(), random()] : null);
      if (!on) continue;
      ways++;
      expect(on.ray.direction[1]).toBeGreaterThan(0);
      expect(Math.abs(Math.hypot(...on.ray.direction) - 1)).toBeLessThan(1e-9);
      expect(Math.max(...on.weight)).toBeLessThanOrEqual(1 + 1e-9);
    }
    expect(ways).toBeGreaterThan(15_000);
  });
});
