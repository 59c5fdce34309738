import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../core/geometry/random.ts';
import { add, basisAround, distance, dot, normalize, scale, sub, type Vec3 } from '../../../core/geometry/vec.ts';
import { emitterSpot, poseToward, spotIntensityPerLumen } from '../../../core/photometry/emitter.ts';
import { crowdingAt, facingSpot } from '../../../core/photometry/facing-spot.ts';
import { openLampSample } from '../../../core/photometry/open-light.ts';
import { seenEmitter } from '../../../core/photometry/seen-emitter.ts';
import { emitterOf } from '../../../core/world/lamp-light.ts';
import { relativeError } from '../support/errors.ts';
import { lampOf } from './lamps.ts';

const seed = 41;
const [half, radius] = [0.6, 0.05];
const pose = poseToward([1, 2, -3], [2, 1.5, -1]);
const { first } = basisAround(pose.axis);
const lantern = emitterOf(lampOf({ kind: 'lantern', diameterMm: 2000 * radius }));
const tube = emitterOf(lampOf({ kind: 'tube', lengthMm: 2000 * half, diameterMm: 2000 * radius }));
const lamps = { lantern, tube };

const beside = normalize(add(pose.axis, [0.3, -0.4, 0.2]));
const across = normalize(sub(beside, scale(first, dot(beside, first))));
/** Close to the skin, over an end of the tube, past its end, and far off. */
const places: Readonly<Record<string, Vec3>> = {
  'one hand from the skin': add(pose.position, scale(across, radius + 0.1)),
  'over one end': add(add(pose.position, scale(first, half)), scale(across, 0.3)),
  'past one end': add(add(pose.position, scale(first, 3 * half)), scale(across, 0.2)),
  'far off': add(pose.position, scale(beside, 12)),
};
const cases = Object.entries(lamps).flatMap(([lamp, emitter]) =>
  Object.entries(places).map(([where, place]) => [lamp, where, emitter, place] as const),
);
/** Way from the lamp to a place that it shows its width to: of a tube square to it. */
const wayOut = (lamp: string, place: Vec3): { toward: Vec3; metres: number } => {
  const offset = sub(place, pose.position);
  const out = lamp === 'lantern' ? offset : sub(offset, scale(first, dot(offset, first)));
  const metres = Math.hypot(...out);
  return { toward: scale(out, 1 / metres), metres };
};
/** Share of the skin, each part of it times the cosine on that way, of all that a place can see: plane geometry. */
const shownSkin = (lamp: string, metres: number): number => {
  const sinShown = Math.sqrt(1 - (radius / metres) ** 2);
  return lamp === 'lantern' ? sinShown ** 2 / 4 : sinShown / Math.PI;
};

describe(`facingSpot (seed ${seed})`, () => {
  it.each(cases)(
    '%s, %s: spots lie on the skin and face the place; crowdingAt tells their crowding (rel 1e-9)',
    (...c) => {
      const [lamp, , emitter, place] = c;
      const random = seededRandom(seed);
      for (let n = 0; n < 500; n++) {
        const { spot, normal, crowding } = facingSpot(emitter, pose, place, random(), random());
        const offset = sub(spot, pose.position);
        const out = lamp === 'lantern' ? offset : sub(offset, scale(first, dot(offset, first)));
        expect(distance(scale(normal as Vec3, radius), out)).toBeLessThanOrEqual(1e-9);
        if (lamp === 'tube') expect(Math.abs(dot(offset, first))).toBeLessThanOrEqual(half * (1 + 1e-9));
        expect(dot(normal as Vec3, sub(place, spot))).toBeGreaterThanOrEqual(-1e-9);
        expect(relativeError(crowdingAt(emitter, pose, place, { spot, normal }), crowding)).toBeLessThanOrEqual(1e-9);
      }
    },
  );

  it.each(cases)('%s, %s: cosine / crowding adds up to what shows of the skin (rel 0.1 %)', (...c) => {
    const [lamp, , emitter, place] = c;
    const { toward, metres } = wayOut(lamp, place);
    const grid = 100;
    let sum = 0;
    for (let i = 0; i < grid; i++)
      for (let j = 0; j < grid; j++) {
        const { normal, crowding } = facingSpot(emitter, pose, place, (i + 0.5) / grid, (j + 0.5) / grid);
        sum += dot(normal as Vec3, toward) / crowding;
      }
    expect(relativeError(sum / grid ** 2, shownSkin(lamp, metres))).toBeLessThanOrEqual(0.001);
  });

  it.each(cases)(
    '%s, %s: light on a plate is that of spots spread evenly over the skin (0.3 %), with less scatter',
    (_, __, emitter, place) => {
      const normal = normalize(add(sub(pose.position, place), scale(first, 0.02)));
      const even = (u: number, v: number): number => {
        const { spot, normal: skin } = emitterSpot(emitter, pose, u, v);
        const way = sub(spot, place);
        const metres = Math.hypot(...way);
        const toward = scale(way, 1 / metres);
        return (
          (spotIntensityPerLumen(emitter, pose, scale(toward, -1), skin) * Math.max(dot(normal, toward), 0)) /
          metres ** 2
        );
      };
      const facing = (u: number, v: number) => openLampSample(emitter, pose, { place, normal }, u, v).lux;
      const grid = 250;
      const numbers = { even: { sum: 0, squares: 0 }, facing: { sum: 0, squares: 0 } };
      for (let i = 0; i < grid; i++)
        for (let j = 0; j < grid; j++)
          for (const [name, sample] of [
            ['even', even],
            ['facing', facing],
          ] as const) {
            const lux = sample((i + 0.5) / grid, (j + 0.5) / grid);
            numbers[name].sum += lux / grid ** 2;
            numbers[name].squares += lux ** 2 / grid ** 2;
          }
      const scatter = ({ sum, squares }: { sum: number; squares: number }) => Math.sqrt(squares - sum ** 2) / sum;
      expect(relativeError(numbers.facing.sum, numbers.even.sum)).toBeLessThanOrEqual(0.003);
      expect(scatter(numbers.facing)).toBeLessThanOrEqual(0.5 * scatter(numbers.even));
    },
  );

  it('takes spots spread evenly, none the denser, on flat lamps, for places on the skin, and the middle of all', () => {
    const panel = emitterOf(lampOf({ kind: 'panel', widthMm: 400, heightMm: 300 }));
    const onIt = add(pose.position, scale(across, radius));
    for (const [emitter, place, u, v] of [
      [panel, places['far off'] as Vec3, 0.2, 0.7],
      [tube, onIt, 0.2, 0.7],
      [lantern, onIt, 0.2, 0.7],
      [tube, places['far off'] as Vec3, 0.5, 0.5],
    ] as const) {
      const found = facingSpot(emitter, pose, place, u, v);
      expect(found).toEqual({ ...emitterSpot(emitter, pose, u, v), crowding: 1 });
      expect(crowdingAt(emitter, pose, place, found)).toBe(1);
    }
  });

  it.each(cases)(
    '%s, %s: a ray sees as much as spots are drawn there: areaAcross is the density turned over (rel 1e-6)',
    (...c) => {
      const [, , emitter, place] = c;
      const random = seededRandom(seed);
      for (let n = 0; n < 200; n++) {
        const { spot, normal, crowding } = facingSpot(emitter, pose, place, random(), random());
        const way = sub(spot, place);
        const metres = Math.hypot(...way);
        const toward = scale(way, 1 / metres);
        const cosine = -dot(normal as Vec3, toward);
        if (cosine < 0.02) continue;
        const skin = emitter === lantern ? 4 * Math.PI * radius ** 2 : 4 * Math.PI * radius * half;
        const seen = seenEmitter(emitter, pose, place, toward);
        expect(relativeError(seen?.areaAcross ?? 0, (skin * cosine) / crowding)).toBeLessThanOrEqual(1e-6);
      }
    },
  );
});
