import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../core/geometry/random.ts';
import { add, basisAround, distance, dot, normalize, scale, sub, type Vec3 } from '../../../core/geometry/vec.ts';
import { emitterSpot, poseToward, spotIntensityPerLumen } from '../../../core/photometry/emitter.ts';
import { crowdingAt, facingSpot } from '../../../core/photometry/facing-spot.ts';
import { openLampSample, openLux } from '../../../core/photometry/open-light.ts';
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

  /** Light on a plate that faces the lamp's middle, of few spots. */
  const facedLux = (emitter: typeof tube, place: Vec3) => {
    const normal = normalize(sub(pose.position, place));
    let sum = 0;
    for (const u of [0.125, 0.375, 0.625, 0.875])
      for (const v of [0.125, 0.375, 0.625, 0.875]) sum += openLampSample(emitter, pose, { place, normal }, u, v).lux;
    return sum / 16;
  };

  // a globe of even luminance lights what faces it as its middle would (Lambert 1760, by the cone's projected solid angle)
  it.each(Object.entries(places))('a lantern, %s: sixteen spots give Phi / (4 pi d^2) (rel 5e-3)', (_, place) => {
    const expected = 1 / (4 * Math.PI * distance(place, pose.position) ** 2);
    expect(relativeError(facedLux(lantern, place), expected)).toBeLessThanOrEqual(5e-3);
  });

  // Hottel's crossed strings (from memory): an endless cylinder of exitance M sends M r / D to what faces its axis
  it('a tube of 800 m, half a metre off: sixteen spots give M r / D (rel 3 %), sixty thousand to rel 0.1 %', () => {
    const endless = { ...tube, halfWidthMetres: 400 };
    const place = add(pose.position, scale(across, 0.5));
    const exitance = 1 / (4 * Math.PI * 400 * radius);
    const expected = (exitance * radius) / 0.5;
    expect(relativeError(facedLux(endless, place), expected)).toBeLessThanOrEqual(0.03);
    const plate = { place, normal: scale(across, -1) };
    expect(relativeError(openLux(endless, pose, plate, 250), expected)).toBeLessThanOrEqual(1e-3);
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
