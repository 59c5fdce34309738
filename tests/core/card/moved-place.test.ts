import { describe, expect, it } from 'vitest';
import { movedPlace } from '../../../core/card/moved-place.ts';
import { stageWith, subjectOf } from '../support/scenes.ts';

const asPlanned = { distanceTimes: 1, hoursMoved: 0, heightTimes: 1 };

describe('movedPlace', () => {
  it('counts heights from nought where no ground is left to stand on', () => {
    // three times as far as 3 km, past the last of the ground
    const [east, north, up] = movedPlace(stageWith(), { position: [5000, 0, 1], aim: [2000, 0, 1] }, [2000, 0], {
      ...asPlanned,
      distanceTimes: 3,
    });
    expect(east).toBeCloseTo(11_000, 6);
    expect(north).toBeCloseTo(0, 6);
    expect(up).toBeCloseTo(1, 6);
  });

  it('goes over a low sheet under which there is no room for the lamp', () => {
    // turned over, it faces the ground 0.4 m under it
    const sheet = subjectOf('sheet', [
      { kind: 'plane', position: [8, 0, 0.4], widthMetres: 3, depthMetres: 3, tiltDegrees: 180 },
    ]);
    const lamp = { position: [4, 0, 1], aim: [0, 0, 1] } as const;
    const moved = movedPlace(stageWith(sheet), { position: [...lamp.position], aim: [...lamp.aim] }, [0, 0], {
      ...asPlanned,
      distanceTimes: 2,
    });
    expect(moved[0]).toBeCloseTo(8, 6);
    expect(moved[2]).toBeCloseTo(1.4, 6);
  });
});
