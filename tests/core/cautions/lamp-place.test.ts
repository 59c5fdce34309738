import { describe, expect, it } from 'vitest';
import { enclosureOf } from '../../../core/cautions/lamp-place.ts';
import { seededRandom } from '../../../core/geometry/random.ts';
import { encodeScan } from '../../../core/scan/scan-code.ts';
import type { Scan } from '../../../core/setup/schema/setup.ts';
import { buildStage } from '../../../core/world/stage.ts';
import { bareGround, stageWith, subjectOf } from '../support/scenes.ts';

const stage = stageWith(
  subjectOf('ball', [{ kind: 'sphere', position: [0, 4, 0.2], radiusMetres: 1, sides: 64 }]),
  subjectOf('crate', [{ kind: 'box', widthMetres: 2, depthMetres: 1, heightMetres: 1.5 }], {
    position: [3, 4, 0],
    turnDegrees: 30,
  }),
);

describe('enclosureOf', () => {
  it('agrees with the shapes’ own formulas for 3000 points, a centimetre round the skins left out (seed 21)', () => {
    const random = seededRandom(21);
    const counts = [0, 0, 0];
    for (let n = 0; n < 3000; n++) {
      const [east, north, up] = [7 * random() - 2, 4 * random() + 2, 2.5 * random()];
      const fromBall = Math.hypot(east, north - 4, up - 1.2) - 1;
      // the crate's own east axis, turned 30 degrees clockwise seen from above
      const [c, s] = [Math.cos(Math.PI / 6), Math.sin(Math.PI / 6)];
      const [across, along] = [(east - 3) * c - (north - 4) * s, (east - 3) * s + (north - 4) * c];
      const fromCrate = Math.max(Math.abs(across) - 1, Math.abs(along) - 0.5, up - 1.5, -up);
      if (Math.abs(fromBall) < 0.01 || Math.abs(fromCrate) < 0.01) continue;
      const expected = fromBall < 0 ? 0 : fromCrate < 0 ? 1 : -1;
      counts[expected + 1] = (counts[expected + 1] as number) + 1;
      expect(enclosureOf(stage, [east, up, -north])?.subject ?? -1).toBe(expected);
    }
    expect(Math.min(...counts)).toBeGreaterThan(100);
  });

  it('a shell that is open below encloses what is under its top, and not what is before its open side', () => {
    // a roof over 2 x 2 m, its eaves 2 m up and its top 3 m, as a scan: no floor
    const roof = encodeScan({
      positions: Float64Array.from([-1, 0, 1, 1, 0, 1, 1, 0, -1, -1, 0, -1, 0, 1, 0]),
      indices: Uint32Array.from([0, 1, 4, 1, 2, 4, 2, 3, 4, 3, 0, 4]),
      colours: null,
    });
    const scan = { ...roof, id: 'roof', name: 'Roof', fileName: 'roof.glb' } as Scan;
    const shell = subjectOf('shell', [{ kind: 'scan', scanId: 'roof', position: [0, 0, 2] }]);
    const open = buildStage(bareGround, [shell], [scan]);
    expect(enclosureOf(open, [0, 2.2, 0])?.subject).toBe(0);
    // only ways that go steeply up meet it
    expect(enclosureOf(open, [0, 1.2, 0])).toBeNull();
  });
});
