import { describe, expect, it } from 'vitest';
import { readPass } from '../support/read-pass.ts';
import { onePassSetup } from '../support/scenes.ts';

describe('the place of a walked lamp', () => {
  /** Raised from 0.5 to 2.5 m and walked from 4 m to 2 m off its aim, lit from 2 s to 6 s of its way of 8 s. */
  const reading = readPass(
    onePassSetup({
      camera: { position: [0, -8, 1.5], aim: [0, 0, 1.5] },
      pass: {
        on: 2,
        off: 6,
        waypoints: [
          { time: 0, position: [4, 0, 0.5], aim: [0, 0, 1.5] },
          { time: 8, position: [2, 0, 2.5], aim: [0, 0, 1.5] },
        ],
      },
    }),
  );

  it('height, distance and clock are all those of half-way through its on-time (abs 1e-9)', () => {
    expect(reading.lampHeightMetres).toBeCloseTo(1.5, 9);
    expect(reading.distanceMetres).toBeCloseTo(3, 9);
    expect(reading.clock).toBe('3:00');
    expect(reading.elevationDegrees).toBeCloseTo(0, 9);
  });
});
