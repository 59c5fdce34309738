import { describe, expect, it } from 'vitest';
import { faceLight } from '../../../core/readings/face-light.ts';
import { silhouetteOf } from '../../../core/readings/silhouette.ts';
import { meterReceiver } from '../../../core/trace/meter.ts';
import { relativeError } from '../support/errors.ts';
import { onlyPassOf } from '../support/read-pass.ts';
import { onePassSetup } from '../support/scenes.ts';

const { world, light } = onlyPassOf(
  onePassSetup({
    camera: { position: [0, 0, 1.5], aim: [0, 6, 1.5] },
    subjects: [
      {
        id: 'ball',
        name: 'Ball',
        finish: { reflectance: 0.3 },
        parts: [{ kind: 'sphere', position: [0, 6, 0.6], radiusMetres: 0.9, sides: 96 }],
      },
    ],
    pass: { waypoints: [{ position: [-3, 3, 2], aim: [0, 6, 1.5] }] },
  }),
);
const { face } = silhouetteOf(world.stage, world.view, 0);
const metered = faceLight(world.stage, face, light.source);
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

describe('faceLight', () => {
  it('meters every third point of the face, which together stand for the whole of it (rel 1e-12)', () => {
    expect(face.length).toBeGreaterThan(1000);
    expect(metered).toHaveLength(Math.ceil(face.length / 3));
    const whole = sum(face.map(({ areaSquareMetres }) => areaSquareMetres));
    expect(relativeError(sum(metered.map(({ areaSquareMetres }) => areaSquareMetres)), whole)).toBeLessThanOrEqual(
      1e-12,
    );
  });

  it('gives the lumens that metering every point of the face gives (rel 2 %)', () => {
    const all = sum(
      face.map(({ point, areaSquareMetres }) => meterReceiver(world.stage, light.source, point, 16) * areaSquareMetres),
    );
    expect(all).toBeGreaterThan(0);
    expect(relativeError(sum(metered.map((p) => p.lux * p.areaSquareMetres)), all)).toBeLessThanOrEqual(0.02);
  });

  it('is empty for a face that is not seen', () => {
    expect(faceLight(world.stage, [], light.source)).toEqual([]);
  });
});
