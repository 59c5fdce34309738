import { describe, expect, it } from 'vitest';
import { seededRandom } from '../../../core/geometry/random.ts';
import { add, basisAround, distance, dot, normalize, scale, sub, type Vec3 } from '../../../core/geometry/vec.ts';
import { type Emitter, emitterSpot, poseToward, spotIntensityPerLumen } from '../../../core/photometry/emitter.ts';
import { seenEmitter } from '../../../core/photometry/seen-emitter.ts';
import { emitterOf } from '../../../core/world/lamp-light.ts';
import { relativeError } from '../support/errors.ts';
import { lampOf } from './lamps.ts';

const [w, h] = [0.4, 0.15];
const pose = poseToward([1, 2, -3], [2, 1.5, -1]);
const { first } = basisAround(pose.axis);
const torch = (beam: object) => emitterOf(lampOf({ kind: 'torch', diameterMm: 2000 * w, beam }));
const panel = (beam: object) => emitterOf(lampOf({ kind: 'panel', widthMm: 2000 * w, heightMm: 2000 * h, beam }));
const lantern = emitterOf(lampOf({ kind: 'lantern', diameterMm: 2000 * w }));
const tube = emitterOf(lampOf({ kind: 'tube', lengthMm: 2000 * w, diameterMm: 2000 * h }));

/** Area that a lamp shows in a direction, as the eye far off sees it: plane geometry. */
const discShows = (out: Vec3) => Math.PI * w * w * dot(pose.axis, out);
const panelShows = (out: Vec3) => 4 * w * h * dot(pose.axis, out);
const globeShows = () => Math.PI * w * w;
const tubeShows = (out: Vec3) => 2 * h * 2 * w * Math.sqrt(1 - dot(first, out) ** 2);

const lamps: readonly (readonly [string, Emitter, (out: Vec3) => number])[] = [
  ['disc, open', torch({ shape: 'open' }), discShows],
  ['disc, lobe', torch({ shape: 'lobe', degrees: 70 }), discShows],
  ['rectangle, open', panel({ shape: 'open' }), panelShows],
  ['rectangle, flood', panel({ shape: 'flood', degrees: 160 }), panelShows],
  ['sphere', lantern, globeShows],
  ['tube', tube, tubeShows],
];
/** Directions from the lamp to the eye, none of them square to or along the tube. */
const ways = [
  normalize(add(pose.axis, [0.1, 0.05, 0])),
  normalize(add(pose.axis, scale(first, 0.8))),
  normalize(add(pose.axis, [-0.2, -0.9, 0.1])),
];

describe('seenEmitter', () => {
  it('sees nothing of a globe from within it, whichever way', () => {
    const inside = add(pose.position, [0.1, 0.05, -0.2]);
    for (const way of [...ways, ...ways.map((each) => scale(each, -1)), normalize(sub(pose.position, inside))])
      expect(seenEmitter(lantern, pose, inside, way)).toBeNull();
  });

  it.each(lamps)(
    '%s: luminance times the area shown is the intensity far off: along rays to its spots (rel 1e-9)',
    (_, emitter, shows) => {
      const random = seededRandom(5);
      let seen = 0;
      for (const out of ways)
        for (let n = 0; n < 200; n++) {
          const { spot, normal } = emitterSpot(emitter, pose, random(), random());
          if (normal && dot(normal, out) < 1e-3) continue;
          const eye = add(spot, scale(out, 7));
          const found = seenEmitter(emitter, pose, eye, scale(out, -1));
          const intensity = spotIntensityPerLumen(emitter, pose, out, null);
          expect(relativeError((found?.luminancePerLumen ?? 0) * shows(out), intensity)).toBeLessThanOrEqual(1e-9);
          expect(Math.abs((found?.t ?? 0) - 7)).toBeLessThanOrEqual(1e-9);
          seen++;
        }
      expect(seen).toBeGreaterThan(250);
    },
  );

  it.each(lamps)(
    '%s: luminance summed over parallel rays is the intensity: its outline is right too (rel 1 %)',
    (_, emitter) => {
      const [cells, half] = [160, 0.5];
      for (const out of ways) {
        const { first: across, second: down } = basisAround(out);
        let sum = 0;
        for (let i = 0; i < cells; i++)
          for (let j = 0; j < cells; j++) {
            const [a, b] = [i, j].map((k) => half * ((2 * k + 1) / cells - 1)) as [number, number];
            const eye = add(add(pose.position, scale(out, 5)), add(scale(across, a), scale(down, b)));
            sum += seenEmitter(emitter, pose, eye, scale(out, -1))?.luminancePerLumen ?? 0;
          }
        const intensity = (sum * (2 * half) ** 2) / cells ** 2;
        expect(relativeError(intensity, spotIntensityPerLumen(emitter, pose, out, null))).toBeLessThanOrEqual(0.01);
      }
    },
  );

  it('is not seen from behind where it is flat, nor where the ray passes by or looks away', () => {
    const eye = add(pose.position, scale(pose.axis, 3));
    const behind = add(pose.position, scale(pose.axis, -3));
    for (const [name, emitter] of lamps) {
      const beside = add(pose.position, [0, 0.6, 0]);
      expect(seenEmitter(emitter, pose, eye, normalize(sub(beside, eye)))).toBeNull();
      expect(seenEmitter(emitter, pose, eye, pose.axis)).toBeNull();
      const back = seenEmitter(emitter, pose, behind, pose.axis);
      if (name.startsWith('disc') || name.startsWith('rectangle')) expect(back).toBeNull();
      else expect(back?.luminancePerLumen).toBeGreaterThan(0);
    }
  });

  it('the ends of a tube are dark, and a point has no size to be seen', () => {
    const eye = add(pose.position, scale(first, 3));
    expect(seenEmitter(tube, pose, eye, scale(first, -1))).toBeNull();
    const point = emitterOf(lampOf({ kind: 'point' }));
    expect(seenEmitter(point, pose, eye, scale(first, -1))).toBeNull();
  });

  it('a snooted lamp is black outside its cone', () => {
    const snooted = { ...torch({ shape: 'open' }), front: { spreadShare: 0, cosSnoot: Math.cos(0.3) } };
    const look = (out: Vec3) => seenEmitter(snooted, pose, add(pose.position, scale(out, 4)), scale(out, -1));
    expect(look(pose.axis)?.luminancePerLumen).toBeGreaterThan(0);
    expect(look(normalize(add(pose.axis, first)))?.luminancePerLumen).toBe(0);
    expect(look(pose.axis)?.t).toBeCloseTo(distance(pose.position, add(pose.position, scale(pose.axis, 4))), 12);
  });
});
