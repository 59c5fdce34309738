import { describe, expect, it } from 'vitest';
import { luminanceOfLinearSrgb } from '../../core/colour/srgb.ts';
import { add, scale, type Vec3 } from '../../core/geometry/vec.ts';
import { validateSetup } from '../../core/setup/parse-setup.ts';
import { meter } from '../../core/trace/meter.ts';
import { buildWorld } from '../../core/world/world.ts';
import { stageWith, standing } from '../core/support/scenes.ts';
import { accuracySection } from './support/accuracy.ts';
import { barePoint, element, roundPanel, south, up } from './support/lamps.ts';

const { check } = accuracySection('Moving light');
const source = 'inverse square and cosine laws along the track, computed';
const stage = stageWith();

/** Dose in lx s on a wall from a point of 1000 cd carried past it, from `reachMetres` on one side to as far on the other. */
const walked = (reachMetres: number, samples: number): number => {
  const [candela, metresPerSecond, away] = [1000, 0.5, 2];
  const seconds = (2 * reachMetres) / metresPerSecond;
  const at = (x: number): { position: Vec3; aim: Vec3 } => ({ position: [x, 10, away], aim: [x, 10, 0] });
  const path = [
    { seconds: 0, ...at(-reachMetres) },
    { seconds, ...at(reachMetres) },
  ];
  const lamp = { ...standing(element, up, barePoint()), path, onOff: [0, seconds] as const };
  return 4 * Math.PI * candela * seconds * meter(stage, lamp, element, south, samples);
};

describe('moving lamp', () => {
  const row = { source, unit: 'lx s' };
  it('1.4a: 1000 cd carried at 0.5 m/s past a wall 2 m off, on a track without end: 2000 lx s (0.5 %)', () => {
    check({
      ...row,
      id: '1.4a',
      claim: 'dose of 1000 cd at 0.5 m/s, 2 m off, track of 240 m for one without end',
      expected: 2000,
      ours: walked(120, 60_000),
      tolerance: { relative: 0.005 },
    });
  });

  it('1.4b: the same from 1 m left to 1 m right: 894.427 lx s (0.1 %)', () => {
    check({
      ...row,
      id: '1.4b',
      claim: 'dose of 1000 cd at 0.5 m/s, 2 m off, from 1 m left to 1 m right',
      expected: 894.427,
      ours: walked(1, 8192),
      tolerance: { relative: 0.001 },
    });
  });

  it('1.4d: 100 lx for 2 s and 50 lx for 4 s are 400 lx s, as two passes of a frame (rel 1e-9)', () => {
    const pass = (id: string, off: number, levelPercent: number) => {
      const waypoints = [{ position: [0, 0, 10], aim: [0, 0, 9] }];
      return { id, name: id, lampId: 'lamp', off, levelPercent, waypoints };
    };
    const setup = validateSetup({
      format: 'lampfall-setup',
      version: 3,
      id: 'doses',
      name: 'Doses',
      camera: { position: [0, -5, 1.5], aim: [0, 0, 1] },
      lamps: [{ kind: 'point', id: 'lamp', name: 'Lamp', output: { from: 'peak-candela', candela: 100 } }],
      schemes: [
        {
          id: 'scheme',
          name: 'Scheme',
          frames: [{ id: 'frame', name: 'Frame', seconds: 10, passes: [pass('full', 2, 100), pass('half', 4, 50)] }],
        },
      ],
    });
    const world = buildWorld(setup, setup.schemes[0] as (typeof setup.schemes)[number]);
    const lamps = (world.frames[0]?.lights ?? []).filter((light) => light.source.kind === 'lamp');
    expect(lamps).toHaveLength(2);
    const dose = lamps.reduce((sum, light) => {
      const lux = meter(world.stage, light.source, [0, 9, 0], up, 1) * luminanceOfLinearSrgb(light.strength);
      return sum + lux * light.seconds;
    }, 0);
    check({
      ...row,
      id: '1.4d',
      claim: 'dose of two passes, 100 lx for 2 s and 50 lx for 4 s',
      source: 'light adds, first principles',
      expected: 400,
      ours: dose,
      tolerance: { relative: 1e-9 },
    });
  });

  it('an element that looks away from the lamp gets nothing', () => {
    const lamp = standing(add(element, up), element, roundPanel(0.2));
    expect(meter(stage, lamp, element, scale(up, -1), 64)).toBe(0);
    expect(meter(stage, lamp, element, up, 64)).toBeGreaterThan(0);
  });
});
