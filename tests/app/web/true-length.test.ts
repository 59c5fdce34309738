import { beforeEach, describe, expect, it } from 'vitest';
import { setTrueLength } from '../../../app/web/groundplan/true-length.ts';
import { useApp } from '../../../app/web/state/app-store.ts';
import { addScanSubject } from '../../../app/web/state/edits/scan-edits.ts';
import { useSession } from '../../../app/web/state/session.ts';
import { encodeScan } from '../../../core/scan/scan-code.ts';
import type { Position, Subject } from '../../../core/setup/schema/setup.ts';
import { onePassSetup } from '../../core/support/scenes.ts';

/** A pyramid 2 m wide and 1 m high. */
const pyramid = encodeScan({
  positions: Float64Array.from([-1, 0, 1, 1, 0, 1, 1, 0, -1, -1, 0, -1, 0, 1, 0]),
  indices: Uint32Array.from([0, 1, 4, 1, 2, 4, 2, 3, 4, 3, 0, 4]),
  colours: null,
});
const empty = onePassSetup({
  camera: { position: [0, 0, 1], aim: [0, 8, 1] },
  pass: { waypoints: [{ time: 0, position: [3, 3, 1], aim: [0, 6, 0] }] },
});
const { setup, subjectId } = addScanSubject(empty, 'scheme', 'rock.glb', pyramid, 0.3);
const scan = setup.subjects.find(({ id }) => id === subjectId) as Subject;
const [x, y, z] = scan.position;
/** From the middle of the scan's foot to a metre east of it, where its edge is. */
const [foot, edge]: readonly [Position, Position] = [
  [x, y, z],
  [x + 1, y, z],
];

describe('setTrueLength', () => {
  beforeEach(() => {
    useApp.getState().open(setup);
    useSession.getState().set({ tape: { from: foot, to: edge } });
  });

  it('makes the scan larger and takes the tape along: a metre that is really 3 m ends 3 m from the foot', () => {
    setTrueLength(scan, foot, edge, 3);
    expect(useApp.getState().history.present.subjects.at(-1)?.parts[0]).toMatchObject({ scale: 3 });
    expect(useSession.getState().tape).toEqual({ from: foot, to: [x + 3, y, z] });
  });

  it('leaves the tape where it is when the scan can’t be so large, and says so', () => {
    // 1 m is really 4 km: 4000 times, and the document takes 1000
    setTrueLength(scan, foot, edge, 4000);
    const { history, notice } = useApp.getState();
    expect(history.present).toBe(setup);
    expect(notice?.tone).toBe('problem');
    expect(useSession.getState().tape).toEqual({ from: foot, to: edge });
  });
});
