import { describe, expect, it } from 'vitest';
import { byDay } from '../../../app/web/picture/by-day.ts';
import { stopsFromMidGrey } from '../../../core/camera/exposure.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { buildWorld, type WorldFrame, type WorldLight } from '../../../core/world/world.ts';
import { onePassSetup } from '../../core/support/scenes.ts';

const setup = onePassSetup({
  camera: { position: [0, 0, 1], aim: [0, 8, 1], drawn: { vignetting: true, noise: true } },
  frame: { aperture: 5.6, seconds: 13, iso: 1600, whiteBalance: { kelvin: 3200 } },
  pass: { waypoints: [{ time: 0, position: [3, 3, 1], aim: [0, 6, 0] }] },
});
const frame = buildWorld(setup, setup.schemes[0] as Setup['schemes'][number]).frames[0] as WorldFrame;

describe('byDay', () => {
  it('puts level 18 % ground 1.5 stops under mid-grey whatever the exposure (E rho / pi; 1e-9 stops)', () => {
    const [light] = byDay(frame).lights as unknown as [WorldLight];
    const [lux] = light.strength;
    const luminanceSeconds = (lux * 0.18 * light.seconds) / Math.PI;
    expect(stopsFromMidGrey(luminanceSeconds, frame.exposure)).toBeCloseTo(-1.5, 9);
  });

  it('leaves lamps, noise, fall-off and colour out', () => {
    const { lights, development } = byDay(frame);
    expect(lights.map(({ source }) => source.kind)).toEqual(['sky']);
    expect(development).toMatchObject({
      vignetting: false,
      noise: null,
      whiteBalance: [
        [1, 0, 0],
        [0, 1, 0],
        [0, 0, 1],
      ],
    });
  });
});
