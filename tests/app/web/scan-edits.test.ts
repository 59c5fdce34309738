import { describe, expect, it, vi } from 'vitest';
import { EditRefused } from '../../../app/web/state/edits/edit-refused.ts';
import { changePart } from '../../../app/web/state/edits/part-edits.ts';
import { removeSubject } from '../../../app/web/state/edits/remove-subject.ts';
import { scaleScan } from '../../../app/web/state/edits/scale-scan.ts';
import { addScanSubject } from '../../../app/web/state/edits/scan-edits.ts';
import { readSetup } from '../../../core/scan/read-setup.ts';
import { encodeScan } from '../../../core/scan/scan-code.ts';
import { formatSetup } from '../../../core/setup/format-setup.ts';
import type { PartOf, Setup } from '../../../core/setup/schema/setup.ts';
import { sizeFault } from '../../../core/setup/setup-size.ts';
import { stageOf } from '../../../core/world/stage.ts';
import { onePassSetup } from '../../core/support/scenes.ts';

const empty = onePassSetup({
  camera: { position: [0, 0, 1], aim: [0, 8, 1] },
  pass: { waypoints: [{ time: 0, position: [3, 3, 1], aim: [0, 6, 0] }] },
});

/** A pyramid 2 m wide and 1 m high. */
const pyramid = encodeScan({
  positions: Float64Array.from([-1, 0, 1, 1, 0, 1, 1, 0, -1, -1, 0, -1, 0, 1, 0]),
  indices: Uint32Array.from([0, 1, 4, 1, 2, 4, 2, 3, 4, 3, 0, 4]),
  colours: null,
});
const withScan = (setup: Setup, file = 'my rock.v2.glb') => addScanSubject(setup, 'scheme', file, pyramid, 0.3);

describe('addScanSubject', () => {
  it('gives a setup that can be saved and read again, with the scan under the file’s name', () => {
    const { setup, subjectId } = withScan(empty);
    expect(readSetup(formatSetup(setup))).toEqual(setup);
    expect(setup.scans[0]).toMatchObject({ id: 'scan', name: 'my rock.v2', fileName: 'my rock.v2.glb' });
    expect(setup.subjects.find(({ id }) => id === subjectId)).toMatchObject({
      name: 'my rock.v2',
      finish: { reflectance: 0.3 },
    });
    expect(stageOf(setup).subjects[0]?.topMetres).toBeCloseTo(1, 4);
  });

  it('keeps eight scans, and refuses a ninth in words; scans that nothing shows make room', () => {
    let setup = empty;
    let last = '';
    for (let i = 0; i < 8; i++) ({ setup, subjectId: last } = withScan(setup));
    expect(setup.scans).toHaveLength(8);
    expect(() => withScan(setup)).toThrow(EditRefused);
    expect(withScan(removeSubject(setup, last)).setup.scans).toHaveLength(8);
  });

  it('refuses a scan with which the file would be over 40 MB, without ever writing out scans', () => {
    // blocks of deflate that hold nothing (RFC 1951, section 3.2.4) make the data as long as wanted
    const longer = (megabytes: number) => {
      const blocks = Buffer.alloc(megabytes * 750_000, Buffer.of(0, 0, 0, 255, 255));
      return { ...pyramid, data: Buffer.concat([blocks, Buffer.from(pyramid.data, 'base64')]).toString('base64') };
    };
    const add = (setup: Setup, megabytes: number) => addScanSubject(setup, 'scheme', 'a.glb', longer(megabytes), 0.3);
    const stringify = vi.spyOn(JSON, 'stringify');
    const full = add(add(empty, 20).setup, 19).setup;
    expect(() => add(full, 2)).toThrow('With this scan the file has 41.0 MB; at most 40 MB are read');
    expect(stringify.mock.results.length).toBeGreaterThan(0);
    for (const { value } of stringify.mock.results) expect(String(value).length).toBeLessThan(1e6);
    stringify.mockRestore();
    // what was taken can be opened again
    expect(sizeFault(formatSetup(full))).toBeNull();
  });

  it('stands a file with a hopeless name', () => {
    const { setup } = withScan(empty, '\u0007.glb');
    expect(readSetup(formatSetup(setup))).toEqual(setup);
  });
});

describe('scaleScan', () => {
  it('makes a length of 2 m one of 5 m, so that the pyramid is 2.5 m high', () => {
    const { setup, subjectId } = withScan(empty);
    const larger = scaleScan(setup, subjectId, 2, 5);
    expect(stageOf(larger).subjects[0]?.topMetres).toBeCloseTo(2.5, 3);
    expect(readSetup(formatSetup(larger))).toEqual(larger);
  });

  it('refuses what the document does not take', () => {
    const { setup, subjectId } = withScan(empty);
    expect(() => scaleScan(setup, subjectId, 0.001, 4000)).toThrow(EditRefused);
  });

  it('takes a scan as long as the document does, 5 km, and refuses a longer one, by tape and by field', () => {
    const wide = { ...pyramid, sizeMetres: [20, 20, 10] as const };
    const { setup, subjectId } = addScanSubject(empty, 'scheme', 'hill.glb', wide, 0.3);
    const longest = scaleScan(setup, subjectId, 20, 5000);
    expect(readSetup(formatSetup(longest))).toEqual(longest);
    expect(() => scaleScan(longest, subjectId, 5000, 5001)).toThrow(EditRefused);
    expect(() => scaleScan(longest, subjectId, 5000, 5001)).toThrow('5001 m long; at most 5000 m');
    const part = longest.subjects[0]?.parts[0] as PartOf<'scan'>;
    expect(changePart(longest, subjectId, 0, { ...part, scale: 249 }).subjects[0]?.parts[0]).toMatchObject({
      scale: 249,
    });
    expect(() => changePart(longest, subjectId, 0, { ...part, scale: 251 })).toThrow(EditRefused);
  });
});
