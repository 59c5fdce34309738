import { describe, expect, it } from 'vitest';
import type { Vec3 } from '../../../core/geometry/vec.ts';
import { eyeLux, eyesOf } from '../../../core/readings/eye-light.ts';
import type { WorldLight } from '../../../core/world/world.ts';
import { discEmitter, stageWith, standing, subjectOf } from '../support/scenes.ts';

const eyes: Vec3 = [0, 1.6, 0];
const lit = { id: 'pass', strength: [1, 1, 1], seconds: 5, lit: [0, 5], holderLuminance: null } as const;
const at = (...places: readonly Vec3[]): WorldLight => ({
  ...lit,
  source: {
    ...standing(places[0] as Vec3, eyes, discEmitter(0)),
    path: places.map((position, i) => ({
      seconds: places.length > 1 ? i / (places.length - 1) : 0,
      position,
      aim: eyes,
    })),
  },
});
/** A cosine beam has 1 / pi cd a lumen on its axis. */
const fromMetres = (metres: number) => 1 / (Math.PI * metres ** 2);

describe('eyeLux', () => {
  it('of a lamp that points at the eyes is its candela over the square of the distance (rel 1e-9)', () => {
    for (const metres of [0.1, 2, 30])
      expect(eyeLux(stageWith(), at([0, 1.6, metres]), eyes) / fromMetres(metres)).toBeCloseTo(1, 9);
  });

  it('of one that is walked is that of its nearest place', () => {
    expect(eyeLux(stageWith(), at([0, 1.6, 9], [0, 1.6, 3]), eyes) / fromMetres(3)).toBeCloseTo(1, 9);
    // past the eyes: the middle of nine moments is nearest
    expect(eyeLux(stageWith(), at([-8, 1.6, 2], [8, 1.6, 2]), eyes) / fromMetres(2)).toBeCloseTo(1, 9);
  });

  it('is nothing behind a wall; the head itself hides nothing', () => {
    const wall = stageWith(
      subjectOf('wall', [{ kind: 'box', position: [0, -1, 0], widthMetres: 4, depthMetres: 0.2, heightMetres: 4 }]),
    );
    expect(eyeLux(wall, at([0, 1.6, 3]), eyes)).toBe(0);
    const head = stageWith(
      subjectOf('head', [{ kind: 'box', position: [0, 0, 0], widthMetres: 0.2, depthMetres: 0.2, heightMetres: 1.72 }]),
    );
    expect(eyeLux(head, at([0, 1.6, 3]), eyes)).toBeGreaterThan(0);
  });
});

describe('eyesOf', () => {
  it('lie 0.12 m under the top', () => {
    const [x, y, z] = eyesOf(Float64Array.of(0, 0, 0, 1, 1.7, 2, 3, 1.2, 4));
    expect([x, y, z]).toEqual([1, expect.closeTo(1.58, 12), 2]);
  });
});
