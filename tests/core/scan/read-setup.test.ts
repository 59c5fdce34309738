import { describe, expect, it } from 'vitest';
import { readSetup } from '../../../core/scan/read-setup.ts';
import { encodeScan } from '../../../core/scan/scan-code.ts';
import { SetupError } from '../../../core/setup/setup-error.ts';
import { stageOf } from '../../../core/world/stage.ts';
import { goodSetup, type Loose } from '../setup/good-setup.ts';

/** A tent-shaped scan of two triangles over a 2 x 2 m square. */
const packed = encodeScan({
  positions: Float64Array.from([-1, 0, 1, 1, 0, 1, 0, 1, 0, -1, 0, -1, 1, 0, -1]),
  indices: Uint32Array.from([0, 1, 2, 4, 3, 2]),
  colours: null,
});

const textWith = (change: (scan: Loose) => void): string => {
  const setup = goodSetup();
  const scan: Loose = { ...packed, id: 'rock', name: 'Rock', fileName: 'rock.glb' };
  change(scan);
  setup.scans = [scan];
  setup.subjects[0].parts = [{ kind: 'scan', scanId: 'rock', scale: 2 }];
  setup.subjects[0].position = [3, 4, 0];
  setup.subjects[0].turnDegrees = 0;
  return JSON.stringify(setup);
};

const errorOf = (text: string): unknown => {
  try {
    readSetup(text);
  } catch (error) {
    return error;
  }
  return null;
};

describe('readSetup', () => {
  it('puts a scan where its part says, at its scale (to a 65,535th of its box)', () => {
    const stage = stageOf(readSetup(textWith(() => undefined)));
    const points = stage.subjects[0]?.points as Float64Array;
    const eastings = points.filter((_, i) => i % 3 === 0);
    expect(Math.min(...eastings)).toBeCloseTo(1, 3);
    expect(Math.max(...eastings)).toBeCloseTo(5, 3);
    expect(stage.subjects[0]?.topMetres).toBeCloseTo(2, 3);
  });

  it.each([
    ['cut off', (scan: Loose) => (scan.data = String(scan.data).slice(0, 8))],
    ['of another count', (scan: Loose) => (scan.triangleCount = 3)],
    ['of noise', (scan: Loose) => (scan.data = 'Zm9vYmFyYmF6')],
  ])('names the scan whose data is %s', (_, change) => {
    const error = errorOf(textWith(change));
    expect(error).toBeInstanceOf(SetupError);
    expect((error as SetupError).path).toBe('scans[0].data');
    expect((error as SetupError).message).toContain('must');
  });

  it('names the part whose scan is missing', () => {
    const error = errorOf(textWith((scan) => (scan.id = 'other')));
    expect((error as SetupError).path).toBe('subjects[0].parts[0].scanId');
  });

  it('names the scale that makes a scan longer than 5 km', () => {
    const scaled = (scale: number) =>
      textWith((scan) => (scan.sizeMetres = [2, 50, 1])).replace('"scale":2', `"scale":${scale}`);
    expect(errorOf(scaled(100))).toBeNull();
    const error = errorOf(scaled(100.1)) as SetupError;
    expect([error.kind, error.path]).toEqual(['reference', 'subjects[0].parts[0].scale']);
    expect(error.message).toContain('5005 m long; at most 5000 m');
  });
});
