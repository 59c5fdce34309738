import { readFileSync } from 'node:fs';
import { EXTMeshoptCompression } from '@gltf-transform/extensions';
import { describe, expect, it } from 'vitest';
import { readScan } from '../../../../app/web/scans/read-scan.ts';
import { ScanError } from '../../../../app/web/scans/scan-error.ts';
import { seededRandom } from '../../../../core/geometry/random.ts';
import { groundDocument, png } from './made-documents.ts';
import { mutateFile } from './mutate-file.ts';
import { nodeTools } from './node-tools.ts';
import { transformIO } from './oracles.ts';

const fixture = (name: string) => new Uint8Array(readFileSync(`tests/app/web/scans/fixtures/${name}`));

/** Sources of every kind that is read. */
const sources = async (): Promise<readonly (readonly [string, Uint8Array])[]> => {
  const io = await transformIO();
  const plain = groundDocument(8, 71, true);
  const picture = plain.document
    .createTexture()
    .setMimeType('image/png')
    .setImage(png(8, 8, (x, y) => [x * 30, y * 30, 9]));
  plain.primitive.setMaterial(plain.document.createMaterial().setBaseColorTexture(picture));
  const meshopt = groundDocument(8, 72);
  meshopt.document.createExtension(EXTMeshoptCompression).setRequired(true);
  const { positions, indices } = groundDocument(8, 73).ground;
  const corners = Array.from({ length: positions.length / 3 }, (_, i) =>
    [...positions.subarray(i * 3, i * 3 + 3)].join(' '),
  );
  const faces = Array.from({ length: indices.length / 3 }, (_, t) => [...indices.subarray(t * 3, t * 3 + 3)]);
  const head = (format: string) =>
    `ply\nformat ${format} 1.0\nelement vertex ${corners.length}\nproperty float x\nproperty float y\nproperty float z\nelement face ${faces.length}\nproperty list uchar int vertex_indices\nend_header\n`;
  const body = Buffer.alloc(faces.length * 13);
  faces.forEach((face, t) => {
    body.writeUInt8(3, t * 13);
    for (const [k, corner] of face.entries()) body.writeInt32LE(corner, t * 13 + 1 + 4 * k);
  });
  const text = (value: string) => new TextEncoder().encode(value);
  return [
    ['draco.glb', fixture('bunny.glb')],
    ['skin.glb', fixture('hand.glb')],
    ['plain.glb', await io.writeBinary(plain.document)],
    ['meshopt.glb', await io.writeBinary(meshopt.document)],
    [
      'scan.obj',
      text(
        `mtllib a.mtl\n${corners.map((c) => `v ${c}`).join('\n')}\n${faces.map((f) => `f ${f.map((i) => i + 1).join(' ')}`).join('\n')}\n`,
      ),
    ],
    ['text.ply', text(`${head('ascii')}${corners.join('\n')}\n${faces.map((f) => `3 ${f.join(' ')}`).join('\n')}\n`)],
    [
      'binary.ply',
      new Uint8Array(Buffer.concat([Buffer.from(head('binary_little_endian')), Buffer.from(positions.buffer), body])),
    ],
  ];
};

/** One sentence that names no code: it begins with a capital, has no full stop and none of the words of engines. */
const isSentence = (text: string) =>
  /^[A-Z“"]/.test(text) &&
  !text.endsWith('.') &&
  text.length < 220 &&
  !/undefined|NaN|null|TypeError|RangeError|\[object|not a function/.test(text);

describe('mutated files', () => {
  it('are all read whole before they are changed', async () => {
    for (const [name, bytes] of await sources())
      expect((await readScan(name, bytes, nodeTools)).indices.length).toBeGreaterThan(0);
  });

  it('560 of them (80 of each of 7 sources, seed 75) give a sound mesh or a ScanError with a sentence, each in under 5 s', async () => {
    let [meshes, refused, slowest] = [0, 0, 0];
    const sentences = new Map<string, number>();
    for (const [s, [name, source]] of (await sources()).entries()) {
      const random = seededRandom(75 + s);
      for (let round = 0; round < 80; round++) {
        const bytes = mutateFile(source, random);
        const start = performance.now();
        try {
          const { positions, indices, colours } = await readScan(name, bytes, nodeTools);
          meshes++;
          expect(indices.length).toBeGreaterThan(0);
          expect(positions.every(Number.isFinite)).toBe(true);
          expect(indices.every((index) => index < positions.length / 3)).toBe(true);
          if (colours) expect(colours.length).toBe(indices.length);
        } catch (error) {
          if (!(error instanceof ScanError)) throw error;
          refused++;
          expect(isSentence(error.message), error.message).toBe(true);
          const kind = error.message.replace(/\d[\d,.]*/g, 'n');
          sentences.set(kind, (sentences.get(kind) ?? 0) + 1);
        }
        slowest = Math.max(slowest, performance.now() - start);
      }
    }
    const vague = sentences.get('The file is broken and can’t be read') ?? 0;
    console.log(
      `${meshes} meshes, ${refused} refused in ${sentences.size} ways (${vague} without a reason), slowest ${slowest.toFixed(0)} ms`,
    );
    expect(meshes + refused).toBe(560);
    // both happen, or the changes were too small or too large to tell anything
    expect(meshes).toBeGreaterThan(50);
    expect(refused).toBeGreaterThan(100);
    expect(slowest).toBeLessThan(5000);
    expect(vague).toBeLessThan(refused / 10);
  }, 300_000);
});
