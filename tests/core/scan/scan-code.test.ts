import { deflateRawSync, inflateRawSync } from 'node:zlib';
import { Inflate } from 'fflate';
import { describe, expect, it, vi } from 'vitest';
import { seededRandom } from '../../../core/geometry/random.ts';
import { decodeBase64, encodeBase64 } from '../../../core/scan/base64.ts';
import { checkScanData } from '../../../core/scan/checked-scans.ts';
import { decodeScan, encodeScan, type PackedScan } from '../../../core/scan/scan-code.ts';
import { ScanDataError } from '../../../core/scan/scan-data-error.ts';
import { numberedSoup, unevenGround } from './soups.ts';

describe('base64, against Node’s own', () => {
  it('writes and reads 300 texts of 0 to 299 bytes alike, seed 5', () => {
    const random = seededRandom(5);
    for (let length = 0; length < 300; length++) {
      const bytes = Uint8Array.from({ length }, () => Math.floor(random() * 256));
      const text = Buffer.from(bytes).toString('base64');
      expect(encodeBase64(bytes)).toBe(text);
      expect(decodeBase64(text)).toEqual(bytes);
    }
  });

  it.each(['A', 'AB=', 'AB=C', 'A===', '====', 'AB\n=', 'ABC\u0141', 'AB-_'])('refuses %j', (text) => {
    expect(decodeBase64(text)).toBeNull();
  });
});

/** Corners of a triangle in the order in which they lie nearest to those of another, as one distance per axis. */
const farthest = (a: readonly number[], b: readonly number[], axis: number): number =>
  Math.min(
    ...[0, 1, 2].map((turn) =>
      Math.max(...[0, 1, 2].map((k) => Math.abs((a[k * 3 + axis] ?? 0) - (b[((k + turn) % 3) * 3 + axis] ?? 0)))),
    ),
  );
const cornersOf = ({ positions, indices }: { positions: Float64Array; indices: Uint32Array }, t: number) =>
  [0, 1, 2].flatMap((k) => [...positions.subarray((indices[t * 3 + k] ?? 0) * 3, (indices[t * 3 + k] ?? 0) * 3 + 3)]);

describe('encodeScan and decodeScan', () => {
  it.each([
    [5000, [4, 3, 2], 1],
    [2000, [0.01, 40, 900], 2],
    [300, [5000, 0.5, 5000], 3],
    [1, [1, 1, 1], 4],
  ] as const)(
    'give back %i triangles of a box %j within half a step of 65,535 (abs 1e-9 of the box), seed %i',
    (count, size, seed) => {
      const soup = numberedSoup(count, size, seed);
      const packed = encodeScan(soup);
      expect([packed.triangleCount, packed.vertexCount, packed.hasColour]).toEqual([count, packed.vertexCount, true]);
      expect(packed.sizeMetres).toEqual([size[0], size[2], size[1]]);
      const back = decodeScan(packed);
      const seen = new Set<number>();
      for (let t = 0; t < count; t++) {
        const [r, g, b] = (back.colours ?? []).slice(t * 3, t * 3 + 3);
        const source = ((r ?? 0) << 16) | ((g ?? 0) << 8) | (b ?? 0);
        seen.add(source);
        const [was, is] = [cornersOf(soup, source), cornersOf(back, t)];
        for (const axis of [0, 1, 2])
          expect(farthest(was, is, axis)).toBeLessThanOrEqual((size[axis] ?? 0) * (1 / 65535 / 2 + 1e-9));
      }
      expect(seen.size).toBe(count);
    },
  );

  it('keep a flat scan flat and without colours', () => {
    const { positions, indices } = numberedSoup(50, [3, 0, 2], 6);
    const packed = encodeScan({ positions, indices, colours: null });
    expect(packed.sizeMetres[2]).toBe(0);
    const back = decodeScan(packed);
    expect(back.colours).toBeNull();
    expect(back.positions.filter((_, i) => i % 3 === 1).every((y) => y === 0)).toBe(true);
  });

  it('make corners that meet one: a fan of 60 separate triangles becomes 61 corners', () => {
    const positions: number[] = [];
    for (let i = 0; i < 60; i++) {
      const [a, b] = [(i * Math.PI) / 30, ((i + 1) * Math.PI) / 30];
      positions.push(0, 1, 0, Math.cos(b), 0, -Math.sin(b), Math.cos(a), 0, -Math.sin(a));
    }
    const indices = Uint32Array.from({ length: 180 }, (_, i) => i);
    const packed = encodeScan({ positions: Float64Array.from(positions), indices, colours: null });
    expect([packed.triangleCount, packed.vertexCount]).toEqual([60, 61]);
  });

  it('leave out triangles without area, and refuse a scan of nothing else', () => {
    const positions = Float64Array.of(-1, 0, 0, 0, 1, 0, 1, 0, 0, 0, 0, 0);
    const flat = [0, 3, 2];
    const packed = encodeScan({ positions, indices: Uint32Array.of(0, 2, 1, ...flat, 1, 1, 2), colours: null });
    expect(packed.triangleCount).toBe(1);
    expect(() => encodeScan({ positions, indices: Uint32Array.from(flat), colours: null })).toThrow(ScanDataError);
  });

  it('hold 300,000 triangles with colours in a text of at most 5 letters each, as zlib too reads it', () => {
    const packed = encodeScan(unevenGround(300_000, 7));
    expect(packed.data.length).toBeLessThan(5 * packed.triangleCount);
    // RFC 1951 as read by zlib: colours, then corners, then at least a byte for each corner of a triangle
    const bytes = inflateRawSync(Buffer.from(packed.data, 'base64'));
    expect(bytes.length).toBeGreaterThanOrEqual(6 * packed.triangleCount + 6 * packed.vertexCount);
  });
});

describe('checkScanData', () => {
  const good = encodeScan(unevenGround(2000, 8));
  const reading = (change: Partial<PackedScan>) => () => checkScanData({ ...good, ...change });
  const raw = inflateRawSync(Buffer.from(good.data, 'base64'));
  const packed = (bytes: Uint8Array) => deflateRawSync(bytes).toString('base64');

  /** What each differs by from the one before; those of these corners never fall. */
  const differences = (values: readonly number[]) => values.map((value, i) => value - (values[i - 1] ?? 0));

  it('lets good data pass, packed by zlib too', () => {
    expect(reading({})).not.toThrow();
    expect(reading({ data: packed(raw) })).not.toThrow();
  });

  it.each([
    ['letters that are no base64', { data: `!${good.data.slice(1)}` }, 'must be a text in base64'],
    ['a text cut in the middle', { data: good.data.slice(0, 400) }, 'broken'],
    ['no data', { data: '' }, 'fewer'],
    ['more triangles than there are', { triangleCount: good.triangleCount + 1 }, 'triangles'],
    ['fewer triangles than there are', { triangleCount: good.triangleCount - 1 }, 'must hold'],
    ['more corners than there are', { vertexCount: good.vertexCount + 1 }, 'must hold'],
    ['fewer corners than there are', { vertexCount: good.vertexCount - 1 }, 'must hold'],
    ['colours that are not there', { hasColour: !good.hasColour }, 'must hold'],
    ['a byte too many', { data: packed(Buffer.concat([raw, Buffer.of(0)])) }, 'must hold'],
    ['a byte too few', { data: packed(raw.subarray(0, -1)) }, 'must hold'],
  ])('refuses %s', (_, change, words) => {
    expect(reading(change)).toThrow(ScanDataError);
    expect(reading(change)).toThrow(words);
  });

  it('refuses triangles without an area, as of a heap in one place, on a line, or upright in a box without height', () => {
    // the format as pack-numbers.ts tells it: columns of corners, high bytes first, twice the step; then 0 for each new corner
    const scanOf = (corners: readonly (readonly number[])[], sizeMetres: PackedScan['sizeMetres']): PackedScan => {
      const column = (axis: number) => corners.map((corner) => 2 * (corner[axis] ?? 0));
      const bytes = [0, 1, 2].flatMap((axis) => [...column(axis).map(() => 0), ...differences(column(axis))]);
      const data = packed(Uint8Array.from([...bytes, 0, 0, 0]));
      return { triangleCount: 1, vertexCount: 3, sizeMetres, hasColour: false, data };
    };
    const box = [1, 1, 1] as const;
    const sound = [[0, 0, 0], [2, 0, 0], [2, 3, 0]]; // biome-ignore format: one a corner
    expect(() => checkScanData(scanOf(sound, box))).not.toThrow();
    const heap = [[5, 5, 5], [5, 5, 5], [5, 5, 5]]; // biome-ignore format: one a corner
    const line = [[0, 0, 0], [1, 2, 3], [2, 4, 6]]; // biome-ignore format: one a corner
    for (const [corners, size] of [[heap, box], [line, box], [sound, [1, 1, 0]]] as const) // biome-ignore format: one a case
      expect(() => checkScanData(scanOf(corners, size))).toThrow('triangles with an area');
  });

  it('stops at data that would unpack to 400 MB before 100 MB are unpacked', () => {
    const bomb = deflateRawSync(Buffer.alloc(400_000_000), { level: 9 }).toString('base64');
    const push = vi.spyOn(Inflate.prototype, 'push');
    expect(reading({ data: bomb })).toThrow('it holds more');
    const packedBytes = push.mock.calls.reduce((sum, [slice]) => sum + slice.length, 0);
    push.mockRestore();
    expect(packedBytes).toBeGreaterThan(0);
    // deflate packs to a 1032nd at most: zlib technical details, "Maximum Compression Factor"
    expect(packedBytes * 1032).toBeLessThan(100e6);
  });

  it('finds no index beyond the corners in 400 texts with changed bytes, seed 9: unpacked or refused', () => {
    const random = seededRandom(9);
    let [refused, unpacked] = [0, 0];
    for (let round = 0; round < 400; round++) {
      const bytes = Uint8Array.from(raw);
      for (let n = 0; n <= round % 3; n++) bytes[Math.floor(random() * bytes.length)] = Math.floor(random() * 256);
      const changed = round % 2 ? Buffer.from(packed(bytes), 'base64') : Buffer.from(good.data, 'base64');
      if (round % 2 === 0) changed[Math.floor(random() * changed.length)] = Math.floor(random() * 256);
      try {
        const { indices, positions } = decodeScan({ ...good, data: changed.toString('base64') });
        expect(indices.every((index) => index < positions.length / 3)).toBe(true);
        unpacked++;
      } catch (error) {
        expect(error).toBeInstanceOf(ScanDataError);
        refused++;
      }
    }
    expect(refused).toBeGreaterThan(100);
    expect(unpacked).toBeGreaterThan(50);
  });
});
