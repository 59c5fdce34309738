import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../core/geometry/random.ts';
import { basisAround, distance, dot, length, scale, sub, type Vec3 } from '../../../core/geometry/vec.ts';
import { emittedShare } from '../../../core/photometry/emitted-share.ts';
import {
  type Emitter,
  emitterArea,
  emitterSpot,
  type LampFront,
  poseToward,
  spotIntensityPerLumen,
} from '../../../core/photometry/emitter.ts';
import { emitterOf } from '../../../core/world/lamp-light.ts';
import { relativeError, worst } from '../support/errors.ts';
import { lampOf, measuredField } from './lamps.ts';
import { overSphere } from './over-sphere.ts';

const seed = 77;
const [w, h] = [0.4, 0.15];
const pose = poseToward([1, 2, -3], [2, 1.5, -1]);
const { first, second } = basisAround(pose.axis);
const shapes = {
  disc: emitterOf(lampOf({ kind: 'torch', diameterMm: 2000 * w, beam: { shape: 'open' } })),
  rectangle: emitterOf(lampOf({ kind: 'panel', widthMm: 2000 * w, heightMm: 2000 * h })),
  sphere: emitterOf(lampOf({ kind: 'lantern', diameterMm: 2000 * w })),
  tube: emitterOf(lampOf({ kind: 'tube', lengthMm: 2000 * w, diameterMm: 2000 * h })),
};
type Shape = keyof typeof shapes;
const names = Object.keys(shapes) as Shape[];

const turnShare = (y: number, x: number): number => (Math.atan2(y, x) / (2 * Math.PI) + 1) % 1;
/** Which of two equal-area shares of the skin a spot lies at, each 0 to 1, by the shape's own formula, and how far off the skin. */
const placeOnSkin = (shape: Shape, spot: Vec3): { shares: readonly [number, number]; off: number } => {
  const offset = sub(spot, pose.position);
  const [a, b, c] = [dot(offset, first), dot(offset, second), dot(offset, pose.axis)];
  const onAxis = Math.abs(c);
  switch (shape) {
    case 'disc':
      return { shares: [(a * a + b * b) / w ** 2, turnShare(b, a)], off: onAxis };
    case 'rectangle':
      return { shares: [(a / w + 1) / 2, (b / h + 1) / 2], off: onAxis };
    // bands of equal height have equal areas (Archimedes)
    case 'sphere':
      return { shares: [(c / w + 1) / 2, turnShare(b, a)], off: Math.abs(length(offset) - w) };
    case 'tube':
      return { shares: [(a / w + 1) / 2, turnShare(c, b)], off: Math.abs(Math.hypot(b, c) - h) };
  }
};

describe(`emitterSpot (seed ${seed})`, () => {
  it.each([...names, 'point'] as const)('%s: (0.5, 0.5) is its middle, without a normal', (name) => {
    const emitter = name === 'point' ? emitterOf(lampOf({ kind: 'point' })) : shapes[name];
    const { spot, normal } = emitterSpot(emitter, pose, 0.5, 0.5);
    expect(distance(spot, pose.position)).toBeLessThanOrEqual(1e-15);
    expect(normal).toBeNull();
  });

  it('point: all spots are its middle', () => {
    expect(emitterSpot(emitterOf(lampOf({ kind: 'point' })), pose, 0.1, 0.9)).toEqual({
      spot: pose.position,
      normal: null,
    });
  });

  it.each(names)(
    '%s: spots lie on the skin (abs 1e-12 m) and fall evenly: 36 equal areas, counts and mean within 4 deviations',
    (name) => {
      const [count, cells] = [36_000, 6];
      const random = seededRandom(seed);
      const counts = new Array<number>(cells * cells).fill(0);
      const sum: [number, number] = [0, 0];
      let off = 0;
      for (let n = 0; n < count; n++) {
        const { spot, normal } = emitterSpot(shapes[name], pose, random(), random());
        const place = placeOnSkin(name, spot);
        const [i, j] = place.shares.map((share) => Math.min(Math.floor(share * cells), cells - 1)) as [number, number];
        counts[i * cells + j] = (counts[i * cells + j] as number) + 1;
        sum[0] += place.shares[0];
        sum[1] += place.shares[1];
        off = Math.max(off, place.off, normal === null ? 0 : Math.abs(length(normal) - 1));
      }
      expect(off).toBeLessThanOrEqual(1e-12);
      const share = 1 / cells ** 2;
      const deviation = Math.sqrt(count * share * (1 - share));
      expect(worst(counts.map((found) => Math.abs(found - count * share)))).toBeLessThanOrEqual(4 * deviation);
      // an even share has the mean 1/2 and the variance 1/12
      for (const total of sum) expect(Math.abs(total / count - 0.5)).toBeLessThanOrEqual(4 / Math.sqrt(12 * count));
    },
  );

  it.each(['sphere', 'tube'] as const)('%s: the normal points straight out of the skin (abs 1e-12)', (name) => {
    const random = seededRandom(seed);
    for (let n = 0; n < 300; n++) {
      const { spot, normal } = emitterSpot(shapes[name], pose, random(), random());
      const offset = sub(spot, pose.position);
      const out = name === 'sphere' ? offset : sub(offset, scale(first, dot(offset, first)));
      expect(distance(normal as Vec3, scale(out, 1 / length(out)))).toBeLessThanOrEqual(1e-12);
    }
  });

  it('the tube lies level, square to the axis (abs 1e-12)', () => {
    const [left, right] = [0, 1 - 2 ** -53].map((u) => emitterSpot(shapes.tube, pose, u, 0.25).spot) as [Vec3, Vec3];
    const along = sub(right, left);
    expect(Math.abs(along[1])).toBeLessThanOrEqual(1e-12);
    expect(Math.abs(dot(along, pose.axis))).toBeLessThanOrEqual(1e-12);
    expect(length(along)).toBeCloseTo(2 * w, 12);
  });
});

describe('emitterArea', () => {
  // areas of plane geometry; a tube's ends are dark
  it.each([
    ['disc', Math.PI * w * w],
    ['rectangle', 4 * w * h],
    ['sphere', 4 * Math.PI * w * w],
    ['tube', 2 * Math.PI * h * 2 * w],
  ] as const)('%s: %d m2 (rel 1e-12)', (name, area) => {
    expect(relativeError(emitterArea(shapes[name]), area)).toBeLessThanOrEqual(1e-12);
  });
});

const cos = (degrees: number) => Math.cos((degrees * Math.PI) / 180);
const uneven = measuredField([0, 10, 40, 90, 120], [0, 60, 180, 300, 360], (v, turn) => 400 - 2 * v + v * cos(turn));
const torch = (beam: object) => emitterOf(lampOf({ kind: 'torch', beam }), [uneven]);
const panel = (beam: object) => emitterOf(lampOf({ kind: 'panel', widthMm: 300, heightMm: 200, beam }), [uneven]);
const point = (beam: object) => emitterOf(lampOf({ kind: 'point', beam }), [uneven]);

/** Bare lamps with the cosines where their intensity jumps or bends. */
const bare: readonly (readonly [string, Emitter, readonly number[]])[] = [
  ['torch, open', torch({ shape: 'open' }), []],
  ['torch, lobe of 24 degrees', torch({ shape: 'lobe', degrees: 24 }), []],
  ['torch, flood of 8 degrees', torch({ shape: 'flood', degrees: 8 }), [cos(4)]],
  ['torch, flood of 180 degrees', torch({ shape: 'flood', degrees: 180 }), []],
  ['torch, spot', torch({ shape: 'spot', beamDegrees: 12, spillDegrees: 80 }), [cos(40), cos(30)]],
  ['torch, measured and turned', torch({ shape: 'measured', beamId: 'file', turnDegrees: 35 }), [cos(40), cos(120)]],
  ['panel, lobe of 90 degrees', panel({ shape: 'lobe', degrees: 90 }), []],
  ['panel, measured', panel({ shape: 'measured', beamId: 'file' }), [cos(40), cos(120)]],
  ['point, even', point({ shape: 'even' }), []],
  ['point, measured', point({ shape: 'measured', beamId: 'file' }), [cos(40), cos(120)]],
  ['lantern', shapes.sphere, []],
  ['tube', shapes.tube, []],
];
const fronts: readonly (readonly [string, LampFront])[] = [
  ['bare', { spreadShare: 0, cosSnoot: -1 }],
  ['with cloth that spreads 40 %', { spreadShare: 0.4, cosSnoot: -1 }],
  ['with a snoot of 30 degrees', { spreadShare: 0, cosSnoot: cos(15) }],
  ['with a snoot of 130 degrees and cloth that spreads all', { spreadShare: 1, cosSnoot: cos(65) }],
];
const cases = bare.flatMap(([name, emitter, edges]) =>
  fronts.map(
    ([how, front]) => [`${name}, ${how}`, { ...emitter, front } as Emitter, [...edges, front.cosSnoot]] as const,
  ),
);

// energy: over all directions a lamp of one lumen sends one lumen, less what its snoot stops
describe('spotIntensityPerLumen over all directions', () => {
  it('is one lumen without a snoot, by what emittedShare says', () => {
    for (const [, emitter] of cases) if (emitter.front?.cosSnoot === -1) expect(emittedShare(emitter)).toBe(1);
  });

  it.each(cases)('%s: the middle spot sends emittedShare (rel 0.2 %)', (_, emitter, edges) => {
    const sent = overSphere(pose.axis, edges, (way) => spotIntensityPerLumen(emitter, pose, way, null));
    expect(relativeError(sent, emittedShare(emitter))).toBeLessThanOrEqual(0.002);
  });

  it.each(cases.filter(([, { shape }]) => shape === 'sphere' || shape === 'tube'))(
    `%s: the mean over spots of the skin sends emittedShare (4 standard errors, at most 2 %, seed ${seed})`,
    (_, emitter, edges) => {
      const random = seededRandom(seed);
      const means: number[] = [];
      for (let n = 0; n < 40; n++)
        means.push(
          overSphere(pose.axis, edges, (way) => {
            const { normal } = emitterSpot(emitter, pose, random(), random());
            return spotIntensityPerLumen(emitter, pose, way, normal);
          }),
        );
      const mean = means.reduce((a, b) => a + b, 0) / means.length;
      const squares = means.reduce((a, b) => a + (b - mean) ** 2, 0);
      const standardError = Math.sqrt(squares / means.length / (means.length - 1));
      expect(standardError / mean).toBeLessThanOrEqual(0.02 / 4);
      expect(Math.abs(mean - emittedShare(emitter))).toBeLessThanOrEqual(4 * standardError);
    },
  );

  it('spots of a flat lamp all send the whole beam (rel 1e-12)', () => {
    const way = pose.axis;
    for (const [, emitter] of cases.filter(([, { shape }]) => shape === 'disc' || shape === 'rectangle')) {
      const { normal } = emitterSpot(emitter, pose, 0.9, 0.2);
      const middle = spotIntensityPerLumen(emitter, pose, way, null);
      expect(relativeError(spotIntensityPerLumen(emitter, pose, way, normal), middle)).toBeLessThanOrEqual(1e-12);
    }
  });
});
