import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { saturationRatio } from '../../../core/camera/exposure.ts';
import { type ClippedReading, clippedReadings } from '../../../core/readings/clipped-reading.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { tracePicture } from '../../../core/trace/picture.ts';
import { buildWorld, type World, type WorldFrame } from '../../../core/world/world.ts';
import { onlyPassOf } from '../support/read-pass.ts';
import { onePassSetup } from '../support/scenes.ts';

/** A torch with a soft beam on a wall that fills the picture. Mid-grey needs 9.67 lx s on it at f/8, ISO 1600. */
const read = (candela: number, temperatureKelvin: number, drawn: object = {}): ClippedReading => {
  const setup = onePassSetup({
    camera: { position: [0, 0, 3], aim: [0, 10, 3], drawn },
    subjects: [
      {
        id: 'wall',
        name: 'Wall',
        parts: [{ kind: 'box', position: [0, 10, 0], widthMetres: 60, depthMetres: 0.4, heightMetres: 40 }],
      },
    ],
    lamp: { output: { from: 'peak-candela', candela }, temperatureKelvin, beam: { shape: 'lobe', degrees: 30 } },
    frame: { iso: 1600, whiteBalance: { kelvin: 4200, tint: 0 } },
    pass: { waypoints: [{ position: [0.5, 0, 3], aim: [0, 10, 3] }] },
  });
  return clippedReadings(onlyPassOf(setup).world)[0] as ClippedReading;
};

describe('clippedReadings', () => {
  it.each([30_000, 60_000, 100_000])(
    'under a lamp of 2000 K and a balance of 4200 K red is full on more of the picture than green, green than blue: %d cd',
    (candela) => {
      const { red, green, blue } = read(candela, 2000);
      expect(red).toBeGreaterThan(green);
      expect(green).toBeGreaterThan(blue);
      expect(red).toBeLessThan(1);
    },
  );

  it('under a cold lamp blue is the first to be full', () => {
    const { red, blue } = read(20_000, 12_000);
    expect(blue).toBeGreaterThan(red);
  });

  it('under a lamp of the balance’s own temperature all channels are full on the same part', () => {
    const { red, green, blue } = read(30_000, 4200);
    expect([green, blue]).toEqual([red, red]);
    expect(red).toBeGreaterThan(0.02);
    expect(red).toBeLessThan(0.9);
  });

  it('more light never leaves less of the picture full; the edge lies where the closed form says (abs 4 % of the picture)', () => {
    const shares = [10_000, 20_000, 40_000, 80_000].map((candela) => read(candela, 4200).green);
    expect([...shares].sort((a, b) => a - b)).toEqual(shares);
    // full where E t = 7.8 pi (10 / S) N^2 / (q rho) (ISO 12232); E = I cos^n cos^3 / d^2, so cos^(n + 3) = full / middle
    const exponent = Math.log(0.5) / Math.log(Math.cos(Math.PI / 12));
    const lux = (7.8 * Math.PI * (10 / 1600) * 8 ** 2) / (0.65 * 0.2);
    // the wall's face is 9.8 m away; the picture there is 14.7 x 9.8 m
    const cos = (lux / (40_000 / 9.8 ** 2)) ** (1 / (exponent + 3));
    const expected = (Math.PI * (1 / cos ** 2 - 1) * 9.8 ** 2) / (14.7 * 9.8);
    expect(expected).toBeGreaterThan(0.1);
    expect(Math.abs((shares[2] as number) - expected)).toBeLessThanOrEqual(0.04);
  });

  it('nothing is full when it is dark, everything when it is absurdly bright', () => {
    expect(read(1, 2000)).toEqual({ red: 0, green: 0, blue: 0 });
    expect(read(1e9, 2700)).toEqual({ red: 1, green: 1, blue: 1 });
  });

  it('noise does not enter', () => {
    expect(read(30_000, 2000, { noise: true })).toEqual(read(30_000, 2000));
  });
});

/** The same by another way: each frame traced as a picture of its own. */
const countAlone = (world: World, frame: WorldFrame): ClippedReading => {
  const size = { width: 48, height: Math.round(48 / world.aspect), samples: 1 };
  const development = { ...frame.development, noise: null };
  const picture = tracePicture({ ...world, bounces: 0 }, { ...frame, view: world.view, development }, size);
  const share = (channel: number) =>
    picture.filter((value, i) => i % 3 === channel && value >= saturationRatio).length / (size.width * size.height);
  return { red: share(0), green: share(1), blue: share(2) };
};

describe('clippedReadings of several frames', () => {
  const stones = parseSetup(readFileSync('assets/setups/three-stones.json', 'utf8'));
  const worldOf = (drawn: object): World => {
    // fast film, so that something is full
    const lit = stones.schemes.map((scheme) => ({
      ...scheme,
      frames: scheme.frames.map((frame) => ({ ...frame, iso: 25_600 })),
    }));
    const camera = { ...stones.camera, drawn: { ...stones.camera.drawn, ...drawn } };
    const setup: Setup = { ...stones, camera, schemes: lit };
    return buildWorld(setup, lit[0] as Scheme);
  };

  it('sharing first hits and sources counts what each frame by itself counts (exact)', () => {
    const world = worldOf({});
    expect(world.frames.length).toBeGreaterThan(1);
    const shares = clippedReadings(world);
    expect(shares).toEqual(world.frames.map((frame) => countAlone(world, frame)));
    expect(Math.max(...shares.map(({ red }) => red))).toBeGreaterThan(0.01);
  });

  it('with the focus blur drawn it still counts through the pinhole (exact)', () => {
    expect(clippedReadings(worldOf({ focusBlur: true }))).toEqual(clippedReadings(worldOf({ focusBlur: false })));
  });
});
