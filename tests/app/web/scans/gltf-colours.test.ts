import type { Document, Material } from '@gltf-transform/core';
import { KHRMaterialsPBRSpecularGlossiness, KHRTextureTransform } from '@gltf-transform/extensions';
import { describe, expect, it } from 'vitest';
import { readScan } from '../../../../app/web/scans/read-scan.ts';
import { groundDocument, png, squareDocument } from './made-documents.ts';
import { nodeTools } from './node-tools.ts';
import { transformIO } from './oracles.ts';

const read = async (document: Document) =>
  readScan('made.glb', await (await transformIO()).writeBinary(document), nodeTools);
const coloursOf = async (material: (document: Document) => Material) =>
  (await read(squareDocument(material))).colours ?? new Uint8Array();

/** Linear light of an sRGB byte and back: IEC 61966-2-1, section 5.2. */
const linear = (byte: number) => (byte / 255 <= 0.04045 ? byte / 255 / 12.92 : ((byte / 255 + 0.055) / 1.055) ** 2.4);
const byte = (light: number) =>
  Math.round(255 * (light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055));

const textured =
  (image: Uint8Array<ArrayBuffer>, change: (material: Material, document: Document) => void = () => {}) =>
  (document: Document) => {
    const texture = document.createTexture().setMimeType('image/png').setImage(image);
    const material = document.createMaterial().setBaseColorTexture(texture);
    change(material, document);
    return material;
  };
const [red, green, blue, white] = [
  [255, 0, 0],
  [0, 255, 0],
  [0, 0, 255],
  [255, 255, 255],
] as const;
/** Four by four pixels: top left red, top right green, bottom left blue, bottom right white. */
const quarters = png(4, 4, (x, y) => (y < 2 ? (x < 2 ? red : green) : x < 2 ? blue : white));

describe('colours of GLB files', () => {
  it('take the base colour factor as linear light', async () => {
    const colours = await coloursOf((document) => document.createMaterial().setBaseColorFactor([0.5, 0.2, 0.01, 1]));
    expect([...colours]).toEqual([0.5, 0.2, 0.01, 0.5, 0.2, 0.01].map(byte));
  });

  it('of an even picture are its bytes, every one from 0 to 255', async () => {
    for (let level = 0; level < 256; level += 15) {
      const colours = await coloursOf(textured(png(2, 2, () => [level, 255 - level, 7])));
      expect([...colours]).toEqual([level, 255 - level, 7, level, 255 - level, 7]);
    }
  });

  it('are means of light, not of bytes: a fine chequer of black and white is near byte 188, not 128', async () => {
    const colours = await coloursOf(textured(png(16, 16, (x, y) => ((x + y) % 2 ? [255, 255, 255] : [0, 0, 0]))));
    for (const value of colours) expect(Math.abs(value - byte(0.5))).toBeLessThanOrEqual(12);
    expect(byte(0.5)).toBe(188);
  });

  it('come from where the corners lie on the picture, its top left at (0, 0)', async () => {
    // the first triangle has the picture's corners bottom left, bottom right, top left
    const colours = await coloursOf(textured(quarters));
    const first = [...colours.subarray(0, 3)].map(linear);
    const second = [...colours.subarray(3)].map(linear);
    // by area: quarters of the square are cut by the diagonal; blue lies wholly in the first, green in the second
    for (const [light, own] of [
      [first, [1 / 4 + 1 / 4, 1 / 4, 1 / 2 + 1 / 4]],
      [second, [1 / 4 + 1 / 4, 1 / 2 + 1 / 4, 1 / 4]],
    ] as const)
      light.forEach((value, k) => {
        expect(Math.abs(value - (own[k] ?? 0))).toBeLessThan(0.13);
      });
  });

  it('multiply picture, factor and the light at the corners', async () => {
    const { document, ground, primitive } = groundDocument(6, 41, true);
    const material = textured(png(2, 2, () => [200, 100, 50]))(document).setBaseColorFactor([0.9, 0.5, 0.8, 1]);
    primitive.setMaterial(material);
    const { colours, indices } = await read(document);
    const factor = [0.9, 0.5, 0.8];
    for (let t = 0; t < indices.length; t += 3)
      for (let k = 0; k < 3; k++) {
        const corners = [0, 1, 2].map((c) => ground.light[(ground.indices[t + c] ?? 0) * 3 + k] ?? 0);
        const expected = linear([200, 100, 50][k] ?? 0) * (factor[k] ?? 0) * (corners.reduce((a, b) => a + b) / 3);
        expect(Math.abs((colours?.[t + k] ?? 0) - byte(expected))).toBeLessThanOrEqual(1);
      }
  });

  it('follow KHR_texture_transform: the specification’s example shows the lower left quarter alone', async () => {
    const colours = await coloursOf(
      textured(quarters, (material, document) => {
        const transform = document
          .createExtension(KHRTextureTransform)
          .createTransform()
          .setOffset([0, 1])
          .setRotation(1.57079632679)
          .setScale([0.5, 0.5]);
        material.getBaseColorTextureInfo()?.setExtension('KHR_texture_transform', transform);
      }),
    );
    expect([...colours]).toEqual([0, 0, 255, 0, 0, 255]);
  });

  it.each([
    [10497, [0, 255, 0]],
    [33071, [0, 255, 0]],
    [33648, [255, 0, 0]],
  ] as const)('go on beyond the picture’s edge as its sampler says: %i', async (wrap, expected) => {
    // the picture's right half is green, its left half red; the square shows 1.5 to 2 of it, or 0.5 to 1 of the next
    const stripes = png(4, 1, (x) => (x < 2 ? red : green));
    const colours = await coloursOf(
      textured(stripes, (material, document) => {
        const transform = document
          .createExtension(KHRTextureTransform)
          .createTransform()
          .setOffset([1.5, 0])
          .setScale([0.5, 1]);
        material
          .getBaseColorTextureInfo()
          ?.setWrapS(wrap)
          .setWrapT(wrap)
          .setExtension('KHR_texture_transform', transform);
      }),
    );
    expect([...colours.subarray(0, 3)]).toEqual(expected);
  });

  it('read the older diffuse colour too', async () => {
    const colours = await coloursOf((document) => {
      const extension = document.createExtension(KHRMaterialsPBRSpecularGlossiness);
      const older = extension.createPBRSpecularGlossiness().setDiffuseFactor([0.3, 0.6, 0.1, 1]);
      return document.createMaterial().setExtension('KHR_materials_pbrSpecularGlossiness', older);
    });
    expect([...colours.subarray(0, 3)]).toEqual([0.3, 0.6, 0.1].map(byte));
  });

  it('are none where nothing says so', async () => {
    expect((await read(groundDocument(3, 42).document)).colours).toBeNull();
  });

  it('are none where the only picture is broken or too large, which is said', async () => {
    const broken = png(8, 8, () => red);
    broken.fill(0, 45, 60);
    const scan = await read(squareDocument(textured(broken)));
    expect(scan.leftOut).toEqual(['A picture could not be read; its colours left out']);
    expect(scan.colours).toBeNull();
    const huge = png(8, 8, () => red);
    new DataView(huge.buffer).setUint32(16, 40_000);
    new DataView(huge.buffer).setUint32(20, 40_000);
    expect((await read(squareDocument(textured(huge)))).leftOut).toEqual([
      'A picture of 40000 × 40000 is too large; its colours left out',
    ]);
  });

  it('take a picture that is broken for a grey of one fifth, times the factor, where other surfaces have colours', async () => {
    const broken = png(8, 8, () => red);
    broken.fill(0, 45, 60);
    const document = squareDocument(textured(broken, (material) => material.setBaseColorFactor([1, 0.5, 0.5, 1])));
    const mesh = document.getRoot().listMeshes()[0];
    const first = mesh?.listPrimitives()[0];
    for (const material of [textured(broken)(document), textured(png(2, 2, () => [9, 80, 200]))(document)])
      if (first) mesh?.addPrimitive(first.clone().setMaterial(material));
    const { colours } = await read(document);
    const grey = byte(0.2);
    const expected = [[grey, byte(0.1), byte(0.1)], [grey, grey, grey], [9, 80, 200]]; // biome-ignore format: one a primitive
    expect([...(colours ?? [])]).toEqual(expected.flatMap((colour) => [...colour, ...colour]));
  });
});
