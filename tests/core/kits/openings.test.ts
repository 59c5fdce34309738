import { describe, expect, it } from 'vitest';
import { enclosureOf } from '../../../core/cautions/lamp-place.ts';
import { closestHit } from '../../../core/geometry/cast-ray.ts';
import { seededRandom } from '../../../core/geometry/random.ts';
import type { Vec3 } from '../../../core/geometry/vec.ts';
import { car } from '../../../core/kits/car.ts';
import type { Kit } from '../../../core/kits/kit.ts';
import { tent } from '../../../core/kits/tent.ts';
import { van } from '../../../core/kits/van.ts';
import { surfaceLuminance } from '../../../core/trace/lit-surface.ts';
import { surfaceAlong } from '../../../core/trace/surface-point.ts';
import { documentFromWorld, worldFromDocument } from '../../../core/world/axes.ts';
import type { Stage } from '../../../core/world/stage.ts';
import { relativeError } from '../support/errors.ts';
import { discEmitter, halfSpaceBeam, stageWith, standing } from '../support/scenes.ts';
import { kitSubject } from './kit-checks.ts';

const seed = 54_131;
const rays = 20_000;

/** Even over the sphere: height evenly over [-1, 1] and a turn (Archimedes). */
const directions = (): Vec3[] => {
  const random = seededRandom(seed);
  return Array.from({ length: rays }, () => {
    const [up, turn] = [random() * 2 - 1, random() * 2 * Math.PI];
    const level = Math.sqrt(1 - up * up);
    return [Math.cos(turn) * level, up, Math.sin(turn) * level];
  });
};

/** A ray, in document axes, that gets out of a box without meeting anything but the ground outside. */
interface Escape {
  readonly from: readonly [number, number, number];
  readonly way: readonly [number, number, number];
}

const escapes = (
  stage: Stage,
  from: [number, number, number],
  isInside: (place: readonly number[]) => boolean,
): Escape[] =>
  directions().flatMap((direction) => {
    const origin = worldFromDocument(from);
    const hit = closestHit(stage.tree, origin, direction);
    const place =
      hit && documentFromWorld(origin.map((v, i) => v + hit.t * (direction[i] as number)) as unknown as Vec3);
    return place && isInside(place) ? [] : [{ from, way: documentFromWorld(direction) }];
  });

const at = ({ from, way }: Escape, t: number): [number, number, number] => [
  from[0] + way[0] * t,
  from[1] + way[1] * t,
  from[2] + way[2] * t,
];

describe(`tent: ${rays} rays from a lantern inside (seed ${seed})`, () => {
  const [wide, long, high] = [1.5, 2.4, 1.1];
  const inside = ([e, n, u]: readonly number[]) =>
    Math.abs(e as number) <= wide / 2 + 1e-3 &&
    Math.abs(n as number) <= long / 2 + 1e-3 &&
    (u as number) <= high + 1e-3;

  it.each([
    [0, [0.05, 0.1, 0.4]],
    [1, [0.05, 0.1, 0.4]],
    // near the hem, and near a corner
    [0, [0.6, -1.1, 0.03]],
    [1, [0.6, 1.1, 0.03]],
  ] as const)('none leaves shape %d with its door closed, from %j', (shape, from) => {
    expect(escapes(stageWith(kitSubject(tent, { shape })), [...from], inside)).toEqual([]);
  });

  it.each([0, 1])('shape %d with its door open: they leave through the doorway alone', (shape) => {
    const out = escapes(stageWith(kitSubject(tent, { shape, door: 1 })), [0.05, 0.1, 0.4], inside);
    expect(out.length).toBeGreaterThan(200);
    for (const ray of out) {
      const [east, , up] = at(ray, (-long / 2 - ray.from[1]) / ray.way[1]);
      expect(ray.way[1]).toBeLessThan(0);
      // a pointed doorway up from the ground: 27 % of the width to each side at its foot, 78 % of the height
      expect(Math.abs(east)).toBeLessThanOrEqual(0.27 * wide + 1e-3);
      expect(up).toBeLessThanOrEqual(0.78 * high + 1e-3);
    }
  });
});

// Lambertian cloth that lets through tau: L = tau E / pi, and E = I cos / d^2
describe('tent: a lantern of 1 lm inside, 1 / (2 pi) cd over the half space in front of it', () => {
  const lampAt: [number, number, number] = [0.1, 0.2, 0.4];
  const intensity = 1 / (2 * Math.PI);
  const numbers = { u: 0.5, v: 0.5, time: 0.5 };
  const glow = (throughShare: number, aim: [number, number, number], eye: [number, number, number]) => {
    const stage = stageWith(kitSubject(tent, { throughShare }));
    const [lamp, origin] = [worldFromDocument(lampAt), worldFromDocument(eye)];
    const source = standing(lamp, worldFromDocument(aim), discEmitter(0, halfSpaceBeam));
    const toward = worldFromDocument(aim).map((v, i) => v - (origin[i] as number)) as unknown as Vec3;
    const apart = Math.hypot(...toward);
    const surface = surfaceAlong(stage, origin, toward.map((v) => v / apart) as unknown as Vec3);
    if (!surface) throw new Error('missed the tent');
    return { surface, luminance: surfaceLuminance(stage, source, surface, numbers, 'none')[0] };
  };

  it.each([0.1, 0.3, 0.55])('the flat front glows with tau E / pi, tau = %d (rel 1e-3)', (tau) => {
    const seen: [number, number, number] = [0.15, -1.2, 0.5];
    const [across, away, over] = [seen[0] - lampAt[0], lampAt[1] - seen[1], seen[2] - lampAt[2]];
    const d = Math.hypot(across, away, over);
    const expected = ((tau / Math.PI) * intensity * (away / d)) / d ** 2;
    expect(relativeError(glow(tau, seen, [0.6, -5, 1.2]).luminance, expected)).toBeLessThanOrEqual(1e-3);
  });

  it('so does the round cloth over it, with the normal of an ellipse (rel 2e-2)', () => {
    const turn = 1.1;
    const [a, b] = [0.748, 1.098];
    const seen: [number, number, number] = [a * Math.cos(turn), 0.35, b * Math.sin(turn)];
    const normal = [Math.cos(turn) / a, 0, Math.sin(turn) / b];
    const to = seen.map((v, i) => v - (lampAt[i] as number));
    const d = Math.hypot(...to);
    const cos = to.reduce((sum, v, i) => sum + v * (normal[i] as number), 0) / (d * Math.hypot(...normal));
    const expected = ((0.3 / Math.PI) * intensity * cos) / d ** 2;
    expect(relativeError(glow(0.3, seen, [4, 0.6, 2]).luminance, expected)).toBeLessThanOrEqual(2e-2);
  });

  it('cloth that lets nothing through stays dark', () => {
    expect(glow(0, [0.15, -1.2, 0.5], [0.6, -5, 1.2]).luminance).toBe(0);
  });
});

type Share = readonly [along: number, up: number];
interface Openings {
  readonly kit: Kit;
  readonly lamp: [number, number, number];
  readonly size: readonly [length: number, width: number, height: number];
  /** Lower and upper edge of windscreen and rear window, shares of length and height. */
  readonly across: readonly (readonly [Share, Share])[];
  /** Box about each side window. */
  readonly side: readonly (readonly [from: Share, to: Share])[];
}

describe.each<[string, Openings]>([
  [
    'car',
    {
      kit: car,
      lamp: [0, 0.15, 1.1],
      size: [4.2, 1.75, 1.45],
      across: [
        [
          [0.28, 0.655],
          [0.425, 0.965],
        ],
        [
          [0.9, 0.69],
          [0.79, 0.955],
        ],
      ],
      side: [
        [
          [0.335, 0.68],
          [0.565, 0.935],
        ],
        [
          [0.59, 0.68],
          [0.83, 0.935],
        ],
      ],
    },
  ],
  [
    'van',
    {
      kit: van,
      lamp: [0, -0.2, 1.5],
      size: [5.2, 1.95, 2.2],
      across: [
        [
          [0.13, 0.5],
          [0.235, 0.925],
        ],
      ],
      side: [
        [
          [0.185, 0.53],
          [0.37, 0.85],
        ],
        [
          [0.42, 0.55],
          [0.66, 0.85],
        ],
        [
          [0.69, 0.55],
          [0.95, 0.85],
        ],
      ],
    },
  ],
])(`%s: ${rays} rays from a lamp inside (seed ${seed})`, (_, { kit, lamp, size, across, side }) => {
  it('leave through every window, and nowhere else', () => {
    const [length, width, height] = size;
    const inside = ([e, n, u]: readonly number[]) =>
      Math.abs(e as number) <= width / 2 + 1e-3 &&
      Math.abs(n as number) <= length / 2 + 1e-3 &&
      (u as number) <= height + 1e-3 &&
      (u as number) > 0.01;
    // bumpers stand out by 4 cm
    const place = ([along, up]: Share): [number, number] => [(along - 0.5) * (length - 0.08), up * height];
    const counts = new Map<string, number>();
    for (const ray of escapes(stageWith(kitSubject(kit)), lamp, inside)) {
      const { from, way } = ray;
      // crossings with the sloping windows, as lines seen from the side, and with the skin of the sides
      const slopes = across.map(([low, high], i) => {
        const [a, b] = [place(low), place(high)];
        const [n, u] = [b[0] - a[0], b[1] - a[1]];
        const t = ((a[0] - from[1]) * u - (a[1] - from[2]) * n) / (way[1] * u - way[2] * n);
        const share = (from[1] + t * way[1] - a[0]) * n + (from[2] + t * way[2] - a[1]) * u;
        return { name: `across ${i}`, t, fits: t > 0 && share >= 0 && share <= n * n + u * u };
      });
      const skin = (Math.sign(way[0]) * (width / 2) - from[0]) / way[0];
      const [, north, up] = at(ray, skin);
      const sides = side.map(([low, high], i) => {
        const [a, b] = [place(low), place(high)];
        const fits = north >= a[0] - 1e-3 && north <= b[0] + 1e-3 && up >= a[1] - 1e-3 && up <= b[1] + 1e-3;
        return { name: `side ${i} ${way[0] < 0 ? 'west' : 'east'}`, t: skin, fits };
      });
      const first = [...slopes, ...sides].filter(({ fits }) => fits).sort((a, b) => a.t - b.t)[0];
      expect(first, JSON.stringify(ray)).toBeDefined();
      if (first) counts.set(first.name, (counts.get(first.name) ?? 0) + 1);
    }
    expect([...counts.keys()].sort()).toEqual(
      [
        ...across.map((__, i) => `across ${i}`),
        ...side.flatMap((__, i) => [`side ${i} east`, `side ${i} west`]),
      ].sort(),
    );
    for (const count of counts.values()) expect(count).toBeGreaterThan(20);
  });
});

describe('enclosureOf', () => {
  it.each([
    [tent, [0.05, 0.1, 0.4]],
    [car, [0, 0.15, 1.1]],
    [van, [0, -0.2, 1.5]],
  ] as const)('a lamp in a hollow tent, car or van is not taken for buried', (kit, place) => {
    expect(enclosureOf(stageWith(kitSubject(kit)), worldFromDocument([...place]))).toBeNull();
  });
});
