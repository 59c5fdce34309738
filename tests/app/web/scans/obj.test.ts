import { BufferAttribute, BufferGeometry, Mesh } from 'three';
import { OBJExporter } from 'three/examples/jsm/exporters/OBJExporter.js';
import { OBJLoader } from 'three/examples/jsm/loaders/OBJLoader.js';
import { describe, expect, it } from 'vitest';
import { readScan } from '../../../../app/web/scans/read-scan.ts';
import { seededRandom } from '../../../../core/geometry/random.ts';
import { lumpyGround } from './made-documents.ts';
import { apart, measureMesh } from './measure.ts';
import { nodeTools } from './node-tools.ts';
import { measuredByThree } from './oracles.ts';

const bytesOf = (text: string) => new TextEncoder().encode(text);
const read = (text: string) => readScan('scan.obj', bytesOf(text), nodeTools);

/** A text with what the format allows: comments, groups, blank and continued lines, negative and slashed indices, quads. */
const mixedText = (seed: number): string => {
  const random = seededRandom(seed);
  const number = () =>
    ((random() - 0.5) * 10 ** Math.floor(random() * 5 - 2)).toPrecision(1 + Math.floor(random() * 16));
  const lines = ['# made for a test', 'mtllib none.mtl', 'o one', ''];
  for (let i = 0; i < 60; i++) {
    const [x, y, z] = [number(), number(), number()];
    lines.push(`v  ${x} ${y}\t${z}`, `vt ${random()} ${random()}`, 'vn 0 1 0');
    if (i % 3 === 2) lines.push(`f ${i - 1}/${i - 1}/${i - 1} ${i}//${i} \\`, ` ${i + 1}`);
    if (i % 7 === 6) lines.push('g part', 'usemtl stone', `f -1 -2/-2 -4//-4`, 's off');
  }
  lines.push('f 1 2 3', 'f 4 9 17');
  return lines.join(seed % 2 ? '\r\n' : '\n');
};

describe('OBJ', () => {
  it.each([1, 2, 3, 4, 5, 6])(
    'reads a text with all that scans have as three’s OBJLoader does, seed %i (1e-6 of its size)',
    async (seed) => {
      const text = mixedText(seed);
      const scan = await read(text);
      const theirs = measuredByThree(new OBJLoader().parse(text));
      const ours = measureMesh(scan);
      expect(ours.triangles).toBe(theirs.triangles);
      expect(apart(theirs, ours)).toBeLessThan(1e-6);
      expect(scan.leftOut).toEqual(['Its materials lie in another file (none.mtl), which was not read']);
    },
  );

  it('reads what three’s OBJExporter writes, its corners shared again', async () => {
    const ground = lumpyGround(20, 7);
    const geometry = new BufferGeometry();
    geometry.setAttribute('position', new BufferAttribute(ground.positions, 3));
    geometry.setIndex(new BufferAttribute(ground.indices, 1));
    const mesh = new Mesh(geometry);
    const scan = await read(new OBJExporter().parse(mesh));
    expect([scan.indices.length / 3, scan.positions.length / 3]).toEqual([800, 441]);
    expect(apart(measuredByThree(mesh), measureMesh(scan))).toBeLessThan(1e-6);
  });

  it.each([
    '0',
    '-0',
    '1',
    '.5',
    '5.',
    '-12.25',
    '1e3',
    '1E-3',
    '+2.5e+2',
    '123456789.123456789',
    '0.1',
    '3.4028235e38',
  ])('reads the number %s as JavaScript does (rel 1e-15)', async (written) => {
    const { ByteText } = await import('../../../../app/web/scans/obj/byte-text.ts');
    const value = new ByteText(bytesOf(`${written} `)).number();
    expect(Math.abs(value - Number(written))).toBeLessThanOrEqual(1e-15 * Math.abs(Number(written)));
  });

  it('takes colours behind the places as sRGB, the mean of a triangle’s corners in light', async () => {
    const scan = await read('v 0 0 0 1 0 0\nv 1 0 0 1 0 0\nv 0 1 0 1 0.5 0\nf 1 2 3\n');
    // IEC 61966-2-1: byte 128 is light 0.21586; a third of it, 0.07195, is 255 (1.055 x 0.07195^(1/2.4) - 0.055) = 75.8
    expect([...(scan.colours ?? [])]).toEqual([255, 76, 0]);
    const bytes = await read('v 0 0 0 255 128 0\nv 1 0 0 255 128 0\nv 0 1 0 255 128 0\nf 1 2 3\n');
    expect([...(bytes.colours ?? [])]).toEqual([255, 128, 0]);
  });

  it('cuts a hollow polygon along its inside: an L of area 3, however it is turned', async () => {
    const l = [
      [0, 0],
      [2, 0],
      [2, 1],
      [1, 1],
      [1, 2],
      [0, 2],
    ] as const;
    for (let first = 0; first < 6; first++)
      for (const lay of [
        ([u, v]: readonly number[]) => `${u} ${v} 0`,
        ([u, v]: readonly number[]) => `0 ${u} ${v}`,
        ([u, v]: readonly number[]) => `${v} 0 ${u}`,
      ]) {
        const corners = l.map((_, i) => `v ${lay(l[(i + first) % 6] ?? l[0])}`).join('\n');
        const { area, triangles } = measureMesh(await read(`${corners}\nf 1 2 3 4 5 6\n`));
        // a fan from the wrong corner would cover more
        expect(area).toBeCloseTo(3, 12);
        expect(triangles).toBe(4);
      }
  });

  it('leaves out faces with corners that are not there, and corners that are no numbers, and says so', async () => {
    const text =
      'v 0 0 0\nv 1 0 0\nv 0 1 0\nv nan 0 0\nv 1e999 0 1\nv 5 5\nf 1 2 3\nf 1 2 9\nf 0 1 2\nf 1 2 x\nf 1 2 4\nf 1 2 5\nf 1 2 6\n';
    const scan = await read(text);
    expect(scan.indices.length / 3).toBe(1);
    expect(scan.leftOut).toEqual([
      '3 faces with corners that are not in the file left out',
      '3 triangles with broken corners left out',
    ]);
  });

  it.each([
    ['v 0 0 0\nv 1 0 0\nv 0 1 0\n', 'points or lines only'],
    ['v 0 0 0\nv 1 0 0\nl 1 2\n', 'points or lines only'],
    ['# nothing\n', 'no corners'],
    ['v 0 0 0\nv 0 0 0\nv 1 1 1\nf 1 2 3\n', 'no triangle with an area'],
    ['', 'The file is empty'],
    ['<html>hello</html>', 'no corners'],
  ])('says of %j that it holds %s', async (text, words) => {
    await expect(read(text)).rejects.toThrow(words);
  });
});
