import { describe, expect, it } from 'vitest';
import { viewDirection } from '../../../core/camera/camera-view.ts';
import { luminanceOfLinearSrgb } from '../../../core/colour/srgb.ts';
import { clearSkyOf, skyOf } from '../../../core/readings/frame-sky.ts';
import { directLuminance, look } from '../../../core/trace/direct-light.ts';
import { traceLayers } from '../../../core/trace/layer.ts';
import { cameraToward, hourPlace } from '../support/hours.ts';
import { onlyPassOf } from '../support/read-pass.ts';
import { onePassSetup } from '../support/scenes.ts';

/** A half moon in the west and a town in the east, seen from a place in haze or not, toward the east. */
const worldOf = (hazeVisibilityKm: number | null, plain = false) => {
  const place = plain
    ? {
        hazeVisibilityKm,
        skylight: { illuminanceLux: 0.01 },
        moonlight: { bearingDegrees: 80, altitudeDegrees: 40, illuminanceLux: 0.1 },
      }
    : hourPlace('2026-08-20T20:30', {
        hazeVisibilityKm,
        glowDomes: [{ bearingDegrees: 80, widthDegrees: 15, luminanceAt10DegreesCdM2: 0.01 }],
      });
  return onlyPassOf(
    onePassSetup({
      camera: cameraToward(80, 25),
      place,
      pass: { waypoints: [{ position: [0, 2, 1], aim: [0, 9, 1] }] },
    }),
  );
};

const size = { width: 8, height: 4, samples: 1 };

describe('clearSkyOf', () => {
  it('of a frame lit by lamps alone is black', () => {
    const { worldFrame } = worldOf(null, true);
    const lamps = worldFrame.lights.filter(({ source }) => source.kind === 'lamp');
    expect(clearSkyOf({ lights: lamps })([0, 1, 0])).toEqual([0, 0, 0]);
    expect(clearSkyOf(worldFrame)([0, 1, 0])[1]).toBeGreaterThan(0);
  });
});

describe('skyOf', () => {
  it.each([
    [0.4, false],
    [3, false],
    [0.4, true],
  ])('is the sky of the picture: haze of %d km, plain %s, middle error 1 in 100', (km, plain) => {
    const { world, worldFrame } = worldOf(km, plain);
    const { stage, view } = world;
    const lights = worldFrame.lights.filter(({ source }) => source.kind !== 'lamp');
    const layers = traceLayers(
      stage,
      view,
      lights.map(({ source }) => source),
      size,
    );
    const read = skyOf(stage, worldFrame);
    const errors: number[] = [];
    for (let i = 0; i < size.width * size.height; i++) {
      const toward = viewDirection(
        view,
        ((i % size.width) + 0.5) / size.width,
        (Math.floor(i / size.width) + 0.5) / size.height,
      );
      if (look(stage, { origin: view.position, direction: toward }, null).surface) continue;
      const seen = lights.reduce((sum, { strength }, k) => sum + (layers[k]?.[3 * i + 1] ?? 0) * strength[1], 0);
      errors.push(Math.abs(read(toward)[1] / seen - 1));
    }
    expect(errors.length).toBeGreaterThan(20);
    // a planet or two may stand in a pixel
    expect(errors.sort((a, b) => a - b)[Math.floor(errors.length / 2)]).toBeLessThan(0.01);
  });

  it('is what each light sends along the look together (rel 1e-9)', () => {
    const { world, worldFrame } = worldOf(0.4);
    const { stage, view } = world;
    for (const place of [0.2, 0.5, 0.8]) {
      const direction = viewDirection(view, place, 0.2);
      const seen = look(stage, { origin: view.position, direction }, null);
      const sum = worldFrame.lights
        .filter(({ source }) => source.kind !== 'lamp')
        .reduce(
          (all, { source, strength }) =>
            all + directLuminance(stage, source, seen, { u: 0.5, v: 0.5, time: 0.5 })[1] * strength[1],
          0,
        );
      expect(Math.abs(skyOf(stage, worldFrame)(direction)[1] / sum - 1)).toBeLessThan(1e-9);
    }
  });

  it('is the clear sky without haze; low in the glow of a town haze of 0.4 km changes it by more than 0.3 stop', () => {
    const { world, worldFrame } = worldOf(null);
    const low = viewDirection(world.view, 0.5, 0.6);
    const clear = clearSkyOf(worldFrame)(low);
    expect(skyOf(world.stage, worldFrame)(low)).toEqual(clear);
    const hazy = worldOf(0.4);
    const stops = Math.log2(
      luminanceOfLinearSrgb(skyOf(hazy.world.stage, hazy.worldFrame)(low)) / luminanceOfLinearSrgb(clear),
    );
    expect(Math.abs(stops)).toBeGreaterThan(0.3);
  });
});
