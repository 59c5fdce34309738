import { describe, expect, it } from 'vitest';
import { visibleRange } from '../../../core/readings/look-around.ts';
import type { Scheme } from '../../../core/setup/schema/setup.ts';
import { buildWorld } from '../../../core/world/world.ts';
import { relativeError } from '../support/errors.ts';
import { onePassSetup } from '../support/scenes.ts';

/** A wall whose south face is at north = `north`, wider and higher than the picture. */
const wall = (north: number) => ({
  id: `wall-${north}`,
  name: 'Wall',
  parts: [{ kind: 'box', position: [0, north + 0.5, 0], widthMetres: 200, depthMetres: 1, heightMetres: 60 }],
});
const rangeOf = (camera: object, subjects: readonly object[] = []) => {
  const setup = onePassSetup({ camera, subjects, pass: { waypoints: [{ position: [3, 0, 1], aim: [0, 8, 1] }] } });
  return visibleRange(buildWorld(setup, setup.schemes[0] as Scheme));
};
/** Level, 1.5 m up, 24 mm on 36 x 24: the lower edge looks down by a tangent of 12 / 24, so ground begins 3 m away. */
const level = { position: [0, 0, 1.5], aim: [0, 10, 1.5] };

describe('visibleRange, along the lens’s axis', () => {
  it('bare ground begins where the lower edge meets it: height / tangent (rel 1e-5); there is no farthest subject', () => {
    const { nearestMetres, farthestMetres } = rangeOf(level);
    expect(relativeError(nearestMetres as number, 3)).toBeLessThanOrEqual(1e-5);
    expect(farthestMetres).toBeNull();
    const half = rangeOf({ position: [0, 0, 0.75], aim: [0, 10, 0.75] });
    expect(relativeError(half.nearestMetres as number, 1.5)).toBeLessThanOrEqual(1e-5);
  });

  it('a wall that fills the picture: both ends are its distance, though its edges are farther from the lens (rel 1e-5)', () => {
    const { nearestMetres, farthestMetres } = rangeOf({ ...level, position: [0, 7.8, 1.5] }, [wall(10)]);
    expect(relativeError(nearestMetres as number, 2.2)).toBeLessThanOrEqual(1e-5);
    expect(relativeError(farthestMetres as number, 2.2)).toBeLessThanOrEqual(1e-5);
  });

  it('through a slit, one look high, goes along the middle of the picture', () => {
    const slit = { ...level, sensor: { widthMm: 100, heightMm: 1 } };
    const { nearestMetres, farthestMetres } = rangeOf(slit, [wall(10)]);
    expect(relativeError(nearestMetres as number, 10)).toBeLessThanOrEqual(1e-5);
    expect(relativeError(farthestMetres as number, 10)).toBeLessThanOrEqual(1e-5);
  });

  it('the farthest is of a subject that is seen, and what hides behind another does not count (rel 1e-5)', () => {
    const low = {
      id: 'low',
      name: 'Low',
      parts: [{ kind: 'box', position: [0, 6.5, 0], widthMetres: 2, depthMetres: 1, heightMetres: 0.8 }],
    };
    expect(relativeError(rangeOf(level, [low, wall(20)]).farthestMetres as number, 20)).toBeLessThanOrEqual(1e-5);
    expect(relativeError(rangeOf(level, [wall(20), wall(40)]).farthestMetres as number, 20)).toBeLessThanOrEqual(1e-5);
  });

  it('looking up past everything there is neither', () => {
    expect(rangeOf({ position: [0, 0, 1.5], aim: [0, 1, 30] }, [wall(300)])).toEqual({
      nearestMetres: null,
      farthestMetres: null,
    });
  });
});
