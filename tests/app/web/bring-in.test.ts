import { beforeEach, describe, expect, it } from 'vitest';
import { bringIn } from '../../../app/web/scandialog/bring-in.ts';
import { useApp } from '../../../app/web/state/app-store.ts';
import { encodeScan } from '../../../core/scan/scan-code.ts';
import { onePassSetup } from '../../core/support/scenes.ts';

/** A tent of two triangles. */
const tent = encodeScan({
  positions: Float64Array.from([-1, 0, 1, 1, 0, 1, 0, 1, 0, -1, 0, -1, 1, 0, -1]),
  indices: Uint32Array.from([0, 1, 2, 4, 3, 2]),
  colours: null,
});
const empty = onePassSetup({
  camera: { position: [0, 0, 1], aim: [0, 8, 1] },
  pass: { waypoints: [{ time: 0, position: [3, 3, 1], aim: [0, 6, 0] }] },
});
const bring = () => bringIn('rock.glb', tent, 0.3, 'scheme');

describe('bringIn', () => {
  beforeEach(() => useApp.getState().open(empty));

  it('adds the scan, selects it and says so', () => {
    expect(bring()).toBeNull();
    const { history, selection, notice } = useApp.getState();
    const subject = history.present.subjects.at(-1);
    expect(subject?.parts).toMatchObject([{ kind: 'scan', scanId: history.present.scans[0]?.id }]);
    expect(selection).toEqual({ kind: 'subject', subjectId: subject?.id });
    expect(notice).toMatchObject({ tone: 'done' });
  });

  it('of a ninth scan gives the reason and changes nothing; a reason from before is not said again', () => {
    useApp.getState().tell({ tone: 'problem', text: 'Something else.' });
    for (let i = 0; i < 8; i++) expect(bring()).toBeNull();
    const { present } = useApp.getState().history;
    const { selection } = useApp.getState();
    expect(bring()).toMatch(/8 scans already/);
    expect(useApp.getState().history.present).toBe(present);
    expect(useApp.getState()).toMatchObject({ selection, notice: null });
  });
});
