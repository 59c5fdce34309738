import { BufferAttribute, BufferGeometry, Mesh } from 'three';
import { PLYExporter } from 'three/examples/jsm/exporters/PLYExporter.js';
import { PLYLoader } from 'three/examples/jsm/loaders/PLYLoader.js';
import { describe, expect, it } from 'vitest';
import { readScan } from '../../../../app/web/scans/read-scan.ts';
import { lumpyGround } from './made-documents.ts';
import { apart, measureMesh } from './measure.ts';
import { nodeTools } from './node-tools.ts';
import { measuredByThree } from './oracles.ts';

const read = (bytes: Uint8Array, name = 'scan.ply') => readScan(name, bytes, nodeTools);
const bytesOf = (text: string) => new TextEncoder().encode(text);
const joined = (...parts: (string | ArrayBuffer)[]) =>
  new Uint8Array(Buffer.concat(parts.map((part) => Buffer.from(part as string))));

// PLYExporter calls it, though its callback is not needed here
Object.assign(globalThis, { requestAnimationFrame: () => 0 });

const exported = (binary: boolean, littleEndian: boolean, withColours: boolean): Uint8Array => {
  const ground = lumpyGround(12, 61);
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(ground.positions, 3));
  geometry.setIndex(new BufferAttribute(ground.indices, 1));
  if (withColours) geometry.setAttribute('color', new BufferAttribute(ground.light, 3));
  geometry.computeVertexNormals();
  const written = new PLYExporter().parse(new Mesh(geometry), () => {}, { binary, littleEndian });
  return typeof written === 'string' ? bytesOf(written) : new Uint8Array(written as unknown as ArrayBuffer);
};
const byThree = (bytes: Uint8Array) => new Mesh(new PLYLoader().parse(bytes.slice().buffer));

describe('PLY', () => {
  it.each([
    ['text', false, false],
    ['binary, low bytes first', true, true],
    ['binary, high bytes first', true, false],
  ])(
    'that three’s PLYExporter wrote as %s is as three’s PLYLoader reads it (1e-6 of its size)',
    async (_, binary, little) => {
      for (const withColours of [false, true]) {
        const bytes = exported(binary, little, withColours);
        const scan = await read(bytes);
        const ours = measureMesh(scan);
        expect(ours.triangles).toBe(288);
        expect(apart(measuredByThree(byThree(bytes)), ours)).toBeLessThan(1e-6);
        expect(scan.colours !== null).toBe(withColours);
      }
    },
  );

  it('has colours of its corners, mean by triangle in light, as three reads them (1 byte)', async () => {
    const bytes = exported(true, true, true);
    const scan = await read(bytes);
    const geometry = byThree(bytes).geometry;
    const [light, index] = [geometry.getAttribute('color'), geometry.getIndex()];
    for (let t = 0; t < scan.indices.length; t += 3)
      for (let k = 0; k < 3; k++) {
        const mean = [0, 1, 2].reduce((sum, c) => sum + (light.getComponent(index?.getX(t + c) ?? 0, k) ?? 0) / 3, 0);
        const byte = 255 * (mean <= 0.0031308 ? 12.92 * mean : 1.055 * mean ** (1 / 2.4) - 0.055);
        expect(Math.abs((scan.colours?.[t + k] ?? 0) - byte)).toBeLessThanOrEqual(1);
      }
  });

  /** The example of the format's first description (Turk, 1994): a cube of six squares, with an element that no one knows. */
  const cube = `ply
format ascii 1.0
comment a cube
element vertex 8
property float x
property float y
property float z
element edge 2
property int vertex1
property list uchar float weights
element face 6
property list uchar int vertex_index
property uchar red
property uchar green
property uchar blue
end_header
0 0 0
0 0 1
0 1 1
0 1 0
1 0 0
1 0 1
1 1 1
1 1 0
0 2 0.5 0.25
1 0
4 0 1 2 3 10 20 30
4 7 6 5 4 40 50 60
4 0 4 5 1 0 0 0
4 1 5 6 2 255 255 255
4 2 6 7 3 1 2 3
4 3 7 4 0 9 8 7
`;

  it('reads a cube of squares with colours of its faces and an unknown element: volume 1, each colour twice', async () => {
    for (const text of [cube, cube.replaceAll('\n', '\r\n'), cube.replaceAll('\n', '\r')]) {
      const scan = await read(bytesOf(text));
      const { triangles, area, volume } = measureMesh(scan);
      expect([triangles, area]).toEqual([12, 6]);
      expect(Math.abs(volume)).toBeCloseTo(1, 12);
      const colours = Array.from({ length: 12 }, (_, t) =>
        [...(scan.colours?.subarray(t * 3, t * 3 + 3) ?? [])].join(),
      );
      expect(new Set(colours)).toEqual(new Set(['10,20,30', '40,50,60', '0,0,0', '255,255,255', '1,2,3', '9,8,7']));
    }
  });

  it('reads double places, 16-bit colours and a list before other properties, high bytes first', async () => {
    const body = new DataView(new ArrayBuffer(3 * 30 + 1 + 12 + 4));
    for (let i = 0; i < 3; i++) {
      [i === 1 ? 1e6 : 0, i === 2 ? 2 : 0, 5].forEach((value, k) => {
        body.setFloat64(i * 30 + k * 8, value);
      });
      [65535, 0, 32896].forEach((value, k) => {
        body.setUint16(i * 30 + 24 + k * 2, value);
      });
    }
    body.setUint8(90, 3);
    [0, 1, 2].forEach((corner, k) => {
      body.setInt32(91 + k * 4, corner);
    });
    body.setFloat32(103, 0.5);
    const head = `ply\nformat binary_big_endian 1.0\nelement vertex 3\n${['x', 'y', 'z'].map((axis) => `property double ${axis}\n`).join('')}${['red', 'green', 'blue'].map((channel) => `property ushort ${channel}\n`).join('')}element face 1\nproperty list uint8 int32 vertex_indices\nproperty float32 quality\nend_header\n`;
    const scan = await read(joined(head, body.buffer));
    expect(measureMesh(scan).area).toBeCloseTo(1e6, 6);
    expect([...(scan.colours ?? [])]).toEqual([255, 0, 128]);
  });

  it('reads strips that begin anew at -1', async () => {
    const head =
      'ply\nformat ascii 1.0\nelement vertex 6\nproperty float x\nproperty float y\nproperty float z\nelement tristrips 1\nproperty list int int vertex_indices\nend_header\n';
    const corners = '0 0 0\n1 0 0\n0 1 0\n1 1 0\n0 2 0\n1 2 0\n';
    const scan = await read(bytesOf(`${head}${corners}10 0 1 2 3 -1 2 3 4 5 -1\n`));
    const { triangles, area } = measureMesh(scan);
    expect([triangles, area]).toEqual([4, 2]);
    // all face up: twice the signed area in the plane is the area's double
    const up = Array.from({ length: 4 }, (_, t) => {
      const at = (c: number, k: number) => scan.positions[(scan.indices[t * 3 + c] ?? 0) * 3 + k] ?? 0;
      return (at(1, 0) - at(0, 0)) * (at(2, 1) - at(0, 1)) - (at(1, 1) - at(0, 1)) * (at(2, 0) - at(0, 0));
    });
    expect(up).toEqual([1, 1, 1, 1]);
  });

  const points = cube.slice(0, cube.indexOf('element edge'));
  it.each([
    ['a cloud of points', `${points}end_header\n${'0 0 0\n'.repeat(8)}`, 'It is a cloud of points without faces'],
    ['a text that breaks off', cube.slice(0, -60), 'breaks off'],
    [
      'four thousand million corners',
      cube.replace('vertex 8', 'vertex 4000000000'),
      'It has 4,000,000,000 corners; at most 15,000,000 are read',
    ],
    ['more faces than the file can hold', cube.replace('face 6', 'face 4000000'), 'shorter than its header says'],
    ['a count that is none', cube.replace('vertex 8', 'vertex -8'), 'Its PLY header is broken'],
    ['a type that is none', cube.replace('list uchar int', 'list uchar word'), '"word" is no type'],
    ['no format', cube.replace('format ascii 1.0\n', ''), 'names no format'],
    ['no end of its head', cube.slice(0, 200), 'it has no end'],
    [
      'an unknown element of endless nothing',
      cube.replace('element edge 2\n', 'element none 4000000000\nelement edge 2\n'),
      'has no properties',
    ],
    ['a list with a negative length', cube.replace('4 0 1 2 3 10', '-4 0 1 2 3 10'), 'a list has no number of entries'],
  ])('with %s says what is wrong', async (_, text, words) => {
    const start = performance.now();
    await expect(read(bytesOf(text))).rejects.toThrow(words);
    expect(performance.now() - start).toBeLessThan(5000);
  });
});
