import { describe, expect, it } from 'vitest';
import { lensReading } from '../../../core/readings/lens-reading.ts';
import type { Scheme } from '../../../core/setup/schema/setup.ts';
import { buildWorld } from '../../../core/world/world.ts';
import { onePassSetup } from '../support/scenes.ts';

/** Named as what it is not: who hides the lamp is told by kind, not by a name that a subject may bear. */
const box = { id: 'ground', name: 'Box', parts: [{ kind: 'box', widthMetres: 1, depthMetres: 1, heightMetres: 2 }] };

/** A camera 8 m south of a box looks north; the lamp stands, or is held, and aims as said. */
const read = (position: readonly number[], aim: readonly number[], held = 'stand') => {
  const setup = onePassSetup({
    camera: { position: [0, -8, 1.5], aim: [0, 0, 1] },
    subjects: [box],
    pass: { held, waypoints: [{ position, aim }] },
  });
  const world = buildWorld(setup, setup.schemes[0] as Scheme);
  const [frame] = world.frames;
  if (!frame?.lights[0]) throw new Error('no light');
  return lensReading(world, frame.lights[0]);
};

describe('lensReading', () => {
  it('a lamp beside the box that shines at the lens is seen whole', () => {
    expect(read([2, 2, 1], [0, -8, 1])).toEqual({ seenShare: 1, shines: true, hiddenBy: null });
  });
  it('the same lamp turned away is seen, and does not shine', () => {
    expect(read([2, 2, 1], [2, 9, 1])).toEqual({ seenShare: 1, shines: false, hiddenBy: null });
  });
  it('held by somebody who stands before it, it is hidden by them; beside them it is seen', () => {
    expect(read([2, 2, 1], [2, 9, 1], 'hand')).toEqual({ seenShare: 0, shines: false, hiddenBy: { kind: 'holder' } });
    expect(read([2, 2, 1], [-9, 2, 1], 'hand').seenShare).toBe(1);
  });
  it('behind the box it is hidden by the box', () => {
    expect(read([0, 2, 1], [0, -8, 1])).toEqual({
      seenShare: 0,
      shines: false,
      hiddenBy: { kind: 'subject', subjectId: 'ground' },
    });
  });
  it('beside the camera it is outside the frame, hidden by nothing', () => {
    expect(read([1, -8, 1.5], [0, 0, 1])).toEqual({ seenShare: 0, shines: false, hiddenBy: null });
  });
  it('under the ground it is hidden by the ground', () => {
    expect(read([2, 2, -1], [0, 0, 1]).hiddenBy).toEqual({ kind: 'ground' });
  });
});
