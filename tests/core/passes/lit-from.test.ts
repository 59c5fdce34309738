import { describe, expect, it } from 'vitest';
import { litFrom } from '../../../core/passes/lit-from.ts';
import type { Pass, Waypoint } from '../../../core/setup/schema/setup.ts';
import { onlyPassOf } from '../support/read-pass.ts';
import { onePassSetup } from '../support/scenes.ts';

const passWith = (waypoints: readonly Waypoint[]): Pass =>
  onlyPassOf(onePassSetup({ camera: { position: [0, -8, 1.5], aim: [0, 0, 1] }, pass: { on: 2, off: 4, waypoints } }))
    .pass;

describe('litFrom', () => {
  const walk = passWith([
    { time: 2, position: [-2, 0, 1], aim: [0, 5, 1] },
    { time: 4, position: [2, 0, 1], aim: [0, 5, 1] },
  ]);

  it('leaves a pass that is lit then already', () => {
    expect(litFrom(walk, 2, 4)).toBe(walk);
  });

  it('moves and stretches the way with the time', () => {
    const later = litFrom(walk, 5, 9);
    expect([later.on, later.off, ...later.waypoints.map(({ time }) => time)]).toEqual([5, 9, 5, 9]);
    expect(later.waypoints.map(({ position }) => position)).toEqual(walk.waypoints.map(({ position }) => position));
  });

  it('leaves a way alone that could only be cut where the lamp meets its aim: the lamp goes off on it', () => {
    const through = passWith([
      { time: 0, position: [0, 0, 1], aim: [2, 0, 1] },
      { time: 4, position: [4, 0, 1], aim: [2, 0, 1] },
    ]);
    expect(litFrom(through, 0, 1)).toEqual({ ...through, on: 0, off: 1 });
  });
});
