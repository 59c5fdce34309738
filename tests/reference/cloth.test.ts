import { describe, expect, it } from 'vitest';
import { cameraView } from '../../core/camera/camera-view.ts';
import { add, normalize, sub, type Vec3 } from '../../core/geometry/vec.ts';
import { evenBeam } from '../../core/photometry/beam.ts';
import type { Emitter } from '../../core/photometry/emitter.ts';
import { traceLayers } from '../../core/trace/layer.ts';
import { surfaceLuminance } from '../../core/trace/lit-surface.ts';
import { type SurfacePoint, surfaceAlong } from '../../core/trace/surface-point.ts';
import type { Stage } from '../../core/world/stage.ts';
import type { Source } from '../../core/world/world.ts';
import { meanMoonRadiusRadians } from '../../core/world/world.ts';
import { stageWith, standing, subjectOf } from '../core/support/scenes.ts';
import { accuracySection } from './support/accuracy.ts';

const { check } = accuracySection('Cloth');
const bulb: Emitter = { shape: 'point', halfWidthMetres: 0, halfHeightMetres: 0, beam: evenBeam };
const intensity = 1 / (4 * Math.PI);
const middle = { u: 0.5, v: 0.5, time: 0.5 };
const tau = 0.3;

/** A level sheet 2 m up. */
const sheet = (finish: object) =>
  subjectOf('sheet', [{ kind: 'plane', widthMetres: 4, depthMetres: 4 }], { position: [0, 0, 2], finish });
const seen = (stage: Stage, eye: Vec3, place: Vec3): SurfacePoint =>
  surfaceAlong(stage, eye, normalize(sub(place, eye))) as SurfacePoint;
const luminance = (stage: Stage, source: Source, eye: Vec3, place: Vec3): number =>
  surfaceLuminance(stage, source, seen(stage, eye, place), middle, 'shared')[0];

describe('a sheet of cloth with a lamp behind', () => {
  const stage = stageWith(sheet({ reflectance: 0.4, transmittance: tau }));

  it.each([[[0, 3, 0]], [[0.5, 2.4, -0.8]], [[-2, 6, 1]]] as [Vec3][])(
    'lamp at %j over it, seen from below: tau I cos / (pi d^2) (rel 1e-9)',
    (lampAt) => {
      const place: Vec3 = [0.2, 2, 0.1];
      const way = sub(lampAt, place);
      const distance = Math.hypot(...way);
      check({
        id: `lamp ${lampAt}`,
        claim: 'luminance of cloth lit from behind',
        source: 'evenly spread light that comes through: tau I cos / (pi d^2), first principles',
        unit: 'cd/m2 per lm',
        expected: (tau * intensity * (way[1] / distance)) / (Math.PI * distance ** 2),
        ours: luminance(stage, standing(lampAt, [0, 0, 0], bulb), [1, 0.5, 2], place),
        tolerance: { relative: 1e-9 },
      });
    },
  );

  it('looks the same from anywhere behind, and from the lamp’s side returns its reflectance only', () => {
    const lamp = standing([0.3, 3, 0], [0, 0, 0], bulb);
    const place: Vec3 = [0.2, 2, 0.1];
    const under = [
      [1, 0.5, 2],
      [-1, 1.9, 0],
      [0, 0.1, 0],
    ].map((eye) => luminance(stage, lamp, eye as never, place));
    const over = luminance(stage, lamp, [1, 4, 2], place);
    const row = { id: 'sides', source: 'Lambert’s law on both sides, first principles', unit: '' };
    for (const ours of under)
      check({
        ...row,
        claim: 'cloth from behind over the same from in front',
        expected: tau / 0.4,
        ours: ours / over,
        tolerance: { relative: 1e-9 },
      });
  });

  it('under open sky shows a reflectance and a transmittance of the light (0.5 %)', () => {
    const samples = 4096;
    const mean = (eye: Vec3) => {
      let sum = 0;
      for (let n = 0; n < samples; n++) {
        const numbers = { u: (n + 0.5) / samples, v: (n * 0.618034) % 1, time: 0.5 };
        sum += surfaceLuminance(stage, { kind: 'sky' }, seen(stage, eye, [0, 2, 0]), numbers, 'shared')[0];
      }
      return (sum / samples) * Math.PI;
    };
    const row = { id: 'sky', source: 'share of 1 lx, first principles', unit: '', tolerance: { relative: 0.005 } };
    check({
      ...row,
      claim: 'light of cloth under open sky, from above, per lux',
      expected: 0.4,
      ours: mean([0, 4, 0]),
    });
    check({
      ...row,
      claim: 'light of cloth under open sky, from below, per lux',
      expected: tau,
      ours: mean([0, 1, 0]),
    });
  });

  it('opaque, or with another sheet between, it stays dark', () => {
    const lamp = standing([0, 3, 0], [0, 0, 0], bulb);
    const opaque = stageWith(sheet({ reflectance: 0.4 }));
    expect(luminance(opaque, lamp, [1, 0.5, 2], [0.2, 2, 0.1])).toBe(0);
    const other = subjectOf('other', [{ kind: 'plane', widthMetres: 4, depthMetres: 4 }], { position: [0, 0, 2.5] });
    const two = stageWith(sheet({ reflectance: 0.4, transmittance: tau }), other);
    expect(luminance(two, lamp, [1, 0.5, 2], [0.2, 2, 0.1])).toBe(0);
  });
});

describe('a closed globe of cloth with a lamp in its middle', () => {
  const radius = 2;
  const rho = 0.5;
  const middleOf: Vec3 = [0, 20 + radius, 0];
  const globe = (finish: object) =>
    stageWith(
      subjectOf('globe', [{ kind: 'sphere', radiusMetres: radius, sides: 96 }], { position: [0, 0, 20], finish }),
    );
  const view = cameraView({
    position: [0, 22, 9],
    aim: middleOf,
    rollRadians: 0,
    sensorWidthMm: 36,
    sensorHeightMm: 24,
    focalLengthMm: 200,
  });
  const lamp = standing(middleOf, add(middleOf, [0, -1, 0]), bulb);
  const mean = (stage: Stage, bounces: 0 | 1 | 2, source: Source = lamp) => {
    const size = { width: 12, height: 8, samples: 64 };
    const [layer = new Float64Array()] = traceLayers(stage, view, [source], size, bounces);
    return layer.reduce((sum, v) => sum + v, 0) / layer.length;
  };
  const cloth = globe({ reflectance: rho, transmittance: tau });

  it('glows as its lamp, by direct light: tau Phi / (4 pi^2 R^2) (0.5 %, its flat faces)', () => {
    check({
      id: 'globe',
      claim: 'luminance of a globe of cloth from outside, by direct light',
      source: 'tau E / pi with E = Phi / 4 pi R^2, first principles',
      unit: 'cd/m2 per lm',
      expected: tau / (4 * Math.PI ** 2 * radius ** 2),
      ours: mean(cloth, 0),
      tolerance: { relative: 0.005 },
    });
  });

  it.each([
    [1, 1 + rho],
    [2, 1 + rho + rho ** 2],
  ] as const)('with %d bounces: what bounces inside comes out too (1 %)', (bounces, series) => {
    check({
      id: 'globe',
      claim: `light of a globe of cloth with ${bounces} bounces over direct light`,
      source: 'geometric series of a closed diffuse room, first principles',
      unit: '',
      expected: series,
      ours: mean(cloth, bounces) / mean(cloth, 0),
      tolerance: { relative: 0.01 },
    });
  });

  it('opaque, it shows nothing of its lamp; and the moon behind does not come through two walls', () => {
    expect(mean(globe({ reflectance: rho }), 2)).toBe(0);
    const behind: Source = { kind: 'moon', toward: normalize([0, 0.1, -1]), radiusRadians: meanMoonRadiusRadians };
    expect(mean(cloth, 0, behind)).toBe(0);
  });
});
