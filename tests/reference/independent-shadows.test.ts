import { readFileSync } from 'node:fs';
import { decode } from 'fast-png';
import { describe, expect, it } from 'vitest';
import { viewDirection } from '../../core/camera/camera-view.ts';
import { validateSetup } from '../../core/setup/parse-setup.ts';
import { irradianceSample } from '../../core/trace/irradiance.ts';
import { surfaceAlong } from '../../core/trace/surface-point.ts';
import { buildWorld } from '../../core/world/world.ts';
import { accuracySection } from './support/accuracy.ts';

const { check } = accuracySection('Independent ray tracer');
const source = 'POV-Ray 3.7, exact solids; scene and recipe in tests/reference/povray';

const [width, height] = [320, 180];
const sides = 128;

/** The yard of `povray/scene.pov`, number by number. A solid's place is the middle of its foot. */
const setup = validateSetup({
  format: 'lampfall-setup',
  version: 3,
  id: 'yard',
  name: 'Yard',
  subjects: [
    {
      id: 'things',
      name: 'Things',
      parts: [
        { kind: 'box', position: [-2.2, 2, 0], widthMetres: 1.2, depthMetres: 0.8, heightMetres: 1.5 },
        {
          kind: 'box',
          position: [1.6, -1.2, 0],
          widthMetres: 1.6,
          depthMetres: 0.5,
          heightMetres: 0.9,
          turnDegrees: 35,
        },
        {
          kind: 'box',
          position: [3.1, 3.2, -0.1],
          widthMetres: 0.5,
          depthMetres: 0.4,
          heightMetres: 2.4,
          rollDegrees: 12,
          tiltDegrees: -9,
          turnDegrees: -20,
        },
        { kind: 'cylinder', position: [0, 0.5, 0], radiusMetres: 0.55, heightMetres: 1.1, sides },
        { kind: 'cylinder', position: [-3.4, -0.6, 0], radiusMetres: 0.06, heightMetres: 2.9, sides },
        { kind: 'cylinder', position: [0.9, 4, 0], radiusMetres: 0.9, topRadiusMetres: 0.35, heightMetres: 1.8, sides },
        { kind: 'sphere', position: [-0.9, -2.1, 0], radiusMetres: 0.45, sides },
        { kind: 'sphere', position: [0, 0.5, 1.1], radiusMetres: 0.4, sides },
        { kind: 'sphere', position: [4.6, 0.4, -0.4], radiusMetres: 0.7, sides },
        { kind: 'cone', position: [2.9, 0.9, 0], radiusMetres: 0.6, heightMetres: 1.7, sides },
      ],
    },
  ],
  camera: {
    position: [0.5, -6, 3],
    aim: [0.3, 1, 0.7],
    sensor: { widthMm: 36, heightMm: 20.25, pixelsWide: width, pixelsHigh: height },
    focalLengthMm: 24,
  },
  lamps: [{ kind: 'lantern', id: 'lamp', name: 'Lamp', output: { from: 'lumens', lumens: 100 }, diameterMm: 1 }],
  schemes: [
    {
      id: 'scheme',
      name: 'Scheme',
      frames: [
        {
          id: 'frame',
          name: 'Frame',
          passes: [
            {
              id: 'pass',
              name: 'Pass',
              lampId: 'lamp',
              held: 'stand',
              off: 1,
              waypoints: [{ position: [-5, 0.8, 3.1], aim: [0, 0, 0] }],
            },
          ],
        },
      ],
    },
  ],
});

/** Whether the lamp's centre lights what is seen at each pixel's centre, rows from the top. */
const litByUs = (): boolean[] => {
  const { stage, view, frames } = buildWorld(setup, setup.schemes[0] as (typeof setup.schemes)[number]);
  const lamp = frames[0]?.lights.find(({ id }) => id === 'pass');
  if (!lamp) throw new Error('the pass has no light');
  return Array.from({ length: width * height }, (_, p) => {
    const [x, y] = [(p % width) + 0.5, Math.floor(p / width) + 0.5];
    const surface = surfaceAlong(stage, view.position, viewDirection(view, x / width, y / height));
    return surface !== null && irradianceSample(stage, lamp.source, surface, { u: 0.5, v: 0.5, time: 0.5 }) > 0;
  });
};

const readMask = (): boolean[] => {
  const { data, channels, ...size } = decode(readFileSync(new URL('./povray/mask.png', import.meta.url)));
  if (size.width !== width || size.height !== height || channels !== 1)
    throw new Error(`the mask must be grey and ${width} x ${height}`);
  return Array.from(data, (value) => value > 127);
};

/** Whether a pixel or one of its eight neighbours differs from another of them. */
const isAtEdge = (mask: readonly boolean[], p: number): boolean => {
  const [x, y] = [p % width, Math.floor(p / width)];
  for (let row = Math.max(y - 1, 0); row <= Math.min(y + 1, height - 1); row++)
    for (let column = Math.max(x - 1, 0); column <= Math.min(x + 1, width - 1); column++)
      if (mask[row * width + column] !== mask[p]) return true;
  return false;
};

describe('hard shadows of a yard against another ray tracer', () => {
  const [ours, theirs] = [litByUs(), readMask()];
  const differing = ours.flatMap((lit, p) => (lit === theirs[p] ? [] : [p]));

  it('at least 99.9 % of the pixels agree on lit or not', () => {
    check({
      id: 'mask a',
      claim: 'lit or not at the centres of 320 x 180 pixels: share that agrees',
      source,
      unit: '%',
      expected: 100,
      ours: 100 * (1 - differing.length / ours.length),
      tolerance: { absolute: 0.1 },
    });
  });

  it('every pixel that differs lies within one pixel of an edge', () => {
    check({
      id: 'mask b',
      claim: 'pixels that differ farther than one pixel from an edge of light',
      source,
      unit: 'pixels',
      expected: 0,
      ours: differing.filter((p) => !isAtEdge(theirs, p)).length,
      tolerance: { absolute: 0 },
    });
  });

  it('a mirrored picture would not pass: the comparison can fail', () => {
    const mirrored = theirs.map((_, p) => theirs[p - (p % width) + width - 1 - (p % width)]);
    const agreeing = ours.filter((lit, p) => lit === mirrored[p]).length / ours.length;
    expect(agreeing).toBeLessThan(0.95);
  });
});
