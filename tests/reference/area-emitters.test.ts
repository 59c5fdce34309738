import { describe, it } from 'vitest';
import { seededRandom } from '../../core/geometry/random.ts';
import { add, normalize, scale, type Vec3 } from '../../core/geometry/vec.ts';
import type { Emitter } from '../../core/photometry/emitter.ts';
import { irradianceSample } from '../../core/trace/irradiance.ts';
import { meter } from '../../core/trace/meter.ts';
import { stageWith, standing } from '../core/support/scenes.ts';
import { accuracySection } from './support/accuracy.ts';
import {
  discFactorOnAxis,
  rectangleFactorUnderCorner,
  rectangleFactorUpright,
  sphereFactor,
  tubeIlluminanceUnderEnd,
} from './support/closed-forms.ts';
import { element, lantern, leaned, north, panel, roundPanel, south, tube, up } from './support/lamps.ts';
import { polygonFactor } from './support/polygon-factor.ts';
import { meanOverSquare } from './support/quadrature.ts';

const { check } = accuracySection('Extended sources');
const stage = stageWith();
const samples = 100_000;
const lumens = 1000;
const above = (offset: Vec3): Vec3 => add(element, offset);

interface Case {
  readonly name: string;
  readonly source: string;
  readonly emitter: Emitter;
  readonly lamp: Vec3;
  readonly aim: Vec3;
  readonly normal: Vec3;
  /** Illuminance in lux of 1000 lm. */
  readonly lux: number;
}

/** Illuminance of 1000 lm over a shining area: E = pi L F with L = flux / (pi area). */
const luxOf = (factor: number, area: number): number => (lumens * factor) / area;

/**
 * A Lambertian cylinder with dark ends, its middle at a distance square to it, summed over the part of its side that is
 * seen: a spot shows its front within acos(radius / distance) of the nearest line, at any place along the tube.
 */
const cylinderLux = (length: number, radius: number, away: number): number => {
  const reach = Math.acos(radius / away);
  const perSpot = (u: number, v: number): number => {
    const [along, turn] = [length * (u - 0.5), reach * (2 * v - 1)];
    const [x, y] = [radius * Math.sin(turn), away - radius * Math.cos(turn)];
    const r = Math.hypot(along, x, y);
    const cosLeaving = (away * Math.cos(turn) - radius) / r;
    return (cosLeaving * (y / r)) / r ** 2;
  };
  const luminance = lumens / (Math.PI * 2 * Math.PI * radius * length);
  return luminance * length * 2 * reach * radius * meanOverSquare(40, perSpot);
};

const straight = { lamp: above([0, 1, 0]), aim: element, normal: up };
/** A panel to the north that faces south and, leaned, sinks half under the element's horizon. */
const sunkNormal = normalize([0, 1, 0.35]);
const sunk = above([0.4, 0.2, -1]);
const sunkCorners: Vec3[] = [
  [-0.6, -0.4, 0],
  [0.6, -0.4, 0],
  [0.6, 0.4, 0],
  [-0.6, 0.4, 0],
].map(([x, y, z]) => add(sunk, [x as number, y as number, z as number]));

const cases: Case[] = [
  {
    name: 'disc of radius 0.2 m, 1 m off',
    source: 'R^2 / (R^2 + d^2): I. Martinez (UPM)',
    emitter: roundPanel(0.2),
    ...straight,
    lux: luxOf(discFactorOnAxis(0.2, 1), Math.PI * 0.2 ** 2),
  },
  {
    name: 'disc of radius 1 m, 1 m off, element leaned by 30 degrees',
    source: 'R^2 / (R^2 + d^2) cos: I. Martinez (UPM)',
    emitter: roundPanel(1),
    ...straight,
    normal: leaned(30),
    lux: luxOf(discFactorOnAxis(1, 1) * Math.cos(Math.PI / 6), Math.PI),
  },
  {
    name: 'panel 0.5 x 0.25 m parallel, a corner 1 m over the element',
    source: 'Howell B-4 (number from memory)',
    emitter: panel(0.5, 0.25),
    lamp: above([0.25, 0.125, -1]),
    aim: add(above([0.25, 0.125, -1]), south),
    normal: north,
    lux: luxOf(rectangleFactorUnderCorner(0.5, 0.25, 1), 0.125),
  },
  {
    name: 'panel 2 x 1 m upright, 1 m off',
    source: 'Howell B-3 (number from memory); Tregenza and Sharples, algorithm 3.15',
    emitter: panel(2, 1),
    lamp: above([1, 0.5, -1]),
    aim: add(above([1, 0.5, -1]), south),
    normal: up,
    lux: luxOf(rectangleFactorUpright(1, 2, 1), 2),
  },
  {
    name: 'panel 1.2 x 0.8 m partly under the element’s horizon',
    source: 'polygon of Lambert 1760, after Stark 2000 (UUCS-00-012)',
    emitter: panel(1.2, 0.8),
    lamp: sunk,
    aim: add(sunk, south),
    normal: sunkNormal,
    lux: luxOf(polygonFactor(sunkCorners, element, sunkNormal), 0.96),
  },
  {
    name: 'lantern of radius 0.05 m, 1 m off, element leaned by 40 degrees',
    source: '(R/d)^2 cos, from memory',
    emitter: lantern(0.05),
    ...straight,
    normal: leaned(40),
    lux: luxOf(sphereFactor(0.05, 1, leaned(40)[1]), 4 * Math.PI * 0.05 ** 2),
  },
  {
    name: 'lantern of radius 0.5 m, its middle 1 m off',
    source: '(R/d)^2 cos, from memory',
    emitter: lantern(0.5),
    ...straight,
    lux: luxOf(sphereFactor(0.5, 1, 1), Math.PI),
  },
  {
    name: 'tube 1.2 m long, 2 mm thick, 1 m off',
    source: 'thin Lambertian line, integrated',
    emitter: tube(1.2, 0.001),
    ...straight,
    lux: 2 * tubeIlluminanceUnderEnd(lumens / (Math.PI ** 2 * 1.2), 0.6, 1),
  },
  {
    name: 'tube 1.2 m long, 0.2 m thick, its middle line 0.5 m off',
    source: 'Lambertian cylinder, quadrature over what is seen of it',
    emitter: tube(1.2, 0.1),
    ...straight,
    lamp: above(scale(up, 0.5)),
    lux: cylinderLux(1.2, 0.1, 0.5),
  },
];

/** Mean and standard error over independent random samples, in lux of 1000 lm. */
const randomMean = ({ emitter, lamp, aim, normal }: Case, seed: number): { mean: number; standardError: number } => {
  const random = seededRandom(seed);
  const receiver = { place: element, shadowOrigin: element, normal };
  const source = standing(lamp, aim, emitter);
  let [sum, squares] = [0, 0];
  for (let n = 0; n < samples; n++) {
    const lux = lumens * irradianceSample(stage, source, receiver, { u: random(), v: random(), time: 0.5 });
    sum += lux;
    squares += lux * lux;
  }
  const mean = sum / samples;
  return { mean, standardError: Math.sqrt((squares / samples - mean ** 2) / (samples - 1)) };
};

describe('area emitters against closed forms, 100 000 samples', () => {
  it.each(cases.map((each, i) => [each.name, each, i + 1] as const))(
    '%s: independent random samples lie within 3 standard errors',
    (name, each, seed) => {
      const { mean, standardError } = randomMean(each, seed);
      check({
        id: `area ${seed}a`,
        claim: `${name}: 1000 lm, random samples, within 3 standard errors`,
        source: each.source,
        unit: 'lx',
        expected: each.lux,
        ours: mean,
        tolerance: { absolute: 3 * standardError },
      });
    },
  );

  it.each(cases.map((each, i) => [each.name, each, i + 1] as const))(
    '%s: our own sequence lies within 0.5 %',
    (name, each, number) => {
      check({
        id: `area ${number}b`,
        claim: `${name}: 1000 lm, our sequence`,
        source: each.source,
        unit: 'lx',
        expected: each.lux,
        ours: lumens * meter(stage, standing(each.lamp, each.aim, each.emitter), element, each.normal, samples),
        tolerance: { relative: 0.005 },
      });
    },
  );
});
