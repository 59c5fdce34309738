import { describe, expect, it } from 'vitest';
import { saturationStops } from '../../core/camera/exposure.ts';
import { targetReading, targetSurface } from '../../core/readings/target-reading.ts';
import { buildWorld } from '../../core/world/world.ts';
import { onePassSetup } from '../core/support/scenes.ts';
import { accuracySection } from './support/accuracy.ts';

const { check } = accuracySection('Trade practice');
const source = 'common practice, no published source';
const height = 1.5;

/** Stops from mid-grey that a flood torch of 100 lm puts in 6 s on an 18 % wall square to it, at f/2.2 and ISO 800. */
const stopsOnWall = (coneDegrees: number, distanceMetres: number): number => {
  const aim = [0, distanceMetres, height];
  const setup = onePassSetup({
    camera: { position: [0.5, 0, height], aim },
    lamp: { output: { from: 'lumens', lumens: 100 }, beam: { shape: 'flood', degrees: coneDegrees } },
    frame: { aperture: 2.2, iso: 800 },
    pass: { off: 6, waypoints: [{ position: [0, 0, height], aim }] },
    subjects: [
      {
        id: 'wall',
        name: 'Wall',
        finish: { reflectance: 0.18 },
        parts: [
          { kind: 'box', position: [0, distanceMetres + 0.5, 0], widthMetres: 4, depthMetres: 1, heightMetres: 3 },
        ],
      },
    ],
  });
  const { stage, view, frames } = buildWorld(setup, setup.schemes[0] as (typeof setup.schemes)[number]);
  const frame = frames[0] as (typeof frames)[number];
  const light = frame.lights[0] as (typeof frame.lights)[number];
  const surface = targetSurface(stage, view.position, [0, height, -distanceMetres]);
  if (!surface) throw new Error('the camera must see the wall');
  return targetReading(stage, surface, light, frame).stops ?? Number.NEGATIVE_INFINITY;
};

// A third of a stop, the finest step that the trade speaks of, is a factor of 2^(1/6) in distance.
const thirdOfAStop = 1 / 3;
const thirdInDistance = 2 ** (1 / 6) - 1;

describe('flood torch of 100 lm, on for 6 s at f/2.2 and ISO 800', () => {
  it.each([
    [120, 11],
    [60, 22],
  ])(
    'a cone of %d degrees reaches mid-grey on a facing surface at about %d m (a third of a stop)',
    (cone, expected) => {
      // by inverse square from what is read at 10 m
      const ours = 10 * 2 ** (stopsOnWall(cone, 10) / 2);
      const claim = `100 lm, cone of ${cone} degrees, 6 s, f/2.2, ISO 800: mid-grey on a facing surface`;
      check({ id: 'trade a', claim, source, unit: 'm', expected, ours, tolerance: { relative: thirdInDistance } });
      expect(Math.abs(stopsOnWall(cone, ours))).toBeLessThan(0.01);
    },
  );

  it.each([
    ['near', 120, 6],
    ['far', 60, 40],
  ])('is within two stops at the %s end: cone of %d degrees at %d m', (end, cone, metres) => {
    check({
      id: 'trade a',
      claim: `the same torch, cone of ${cone} degrees: stops from mid-grey at the ${end} end, ${metres} m`,
      source,
      unit: 'stops',
      expected: 0,
      ours: stopsOnWall(cone, metres),
      tolerance: { absolute: 2 },
    });
  });

  it('no one cone does both: the wide one is too dark at 40 m, the narrow one too bright at 6 m (by 2 stops)', () => {
    expect(stopsOnWall(120, 40)).toBeLessThan(-2);
    expect(stopsOnWall(60, 6)).toBeGreaterThan(2);
  });

  it.each([
    [120, 11],
    [60, 22],
  ])(
    'burns at 3 m with a cone of %d degrees: over mid-grey as the inverse square has it from %d m',
    (cone, greyMetres) => {
      const ours = stopsOnWall(cone, 3);
      check({
        id: 'trade a',
        claim: `the same torch, cone of ${cone} degrees: stops over mid-grey at 3 m, where it burns`,
        source,
        unit: 'stops',
        expected: 2 * Math.log2(greyMetres / 3),
        ours,
        tolerance: { absolute: thirdOfAStop },
      });
      expect(ours).toBeGreaterThan(saturationStops);
    },
  );
});
