import { type Accessor, Document, type Material } from '@gltf-transform/core';
import { encode } from 'fast-png';
import { seededRandom } from '../../../../core/geometry/random.ts';

/** A lumpy ground of cells by cells squares, 4 units wide, not centred; corners shared. */
export const lumpyGround = (cells: number, seed: number) => {
  const random = seededRandom(seed);
  const [positions, places, light]: [number[], number[], number[]] = [[], [], []];
  for (let j = 0; j <= cells; j++)
    for (let i = 0; i <= cells; i++) {
      positions.push(1 + (4 * i) / cells, 0.3 * random(), -2 + (4 * j) / cells);
      places.push(i / cells, j / cells);
      light.push(random(), random(), random());
    }
  const indices: number[] = [];
  for (let j = 0; j < cells; j++)
    for (let i = 0; i < cells; i++) {
      const [a, b] = [j * (cells + 1) + i, (j + 1) * (cells + 1) + i];
      indices.push(a, b, a + 1, a + 1, b, b + 1);
    }
  return {
    positions: Float32Array.from(positions),
    places: Float32Array.from(places),
    light: Float32Array.from(light),
    indices: Uint32Array.from(indices),
  };
};

/** Adds an accessor over the document's one buffer. */
export const accessor = (
  document: Document,
  type: 'SCALAR' | 'VEC2' | 'VEC3' | 'VEC4' | 'MAT4',
  array: Float32Array | Uint32Array | Uint16Array | Uint8Array | Int16Array,
): Accessor => {
  const buffer = document.getRoot().listBuffers()[0] ?? document.createBuffer();
  return document
    .createAccessor()
    .setType(type)
    .setArray(array as Float32Array<ArrayBuffer>)
    .setBuffer(buffer);
};

/** A document of one mesh of one primitive at one node, with colours at its corners if asked. */
export const groundDocument = (cells: number, seed: number, withLight = false) => {
  const document = new Document();
  const ground = lumpyGround(cells, seed);
  const primitive = document
    .createPrimitive()
    .setAttribute('POSITION', accessor(document, 'VEC3', ground.positions))
    .setAttribute('TEXCOORD_0', accessor(document, 'VEC2', ground.places))
    .setIndices(accessor(document, 'SCALAR', ground.indices));
  if (withLight) primitive.setAttribute('COLOR_0', accessor(document, 'VEC3', ground.light));
  const mesh = document.createMesh().addPrimitive(primitive);
  const node = document.createNode().setMesh(mesh);
  const scene = document.createScene().addChild(node);
  document.getRoot().setDefaultScene(scene);
  return { document, ground, primitive, mesh, node, scene };
};

/** A square from (0, 0) to (1, 1), whose picture lies on it upright: its top left at (0, 1). Two triangles, split along a diagonal. */
export const squareDocument = (material: (document: Document) => Material) => {
  const document = new Document();
  const primitive = document
    .createPrimitive()
    .setAttribute('POSITION', accessor(document, 'VEC3', Float32Array.of(0, 0, 0, 1, 0, 0, 0, 1, 0, 1, 1, 0)))
    .setAttribute('TEXCOORD_0', accessor(document, 'VEC2', Float32Array.of(0, 1, 1, 1, 0, 0, 1, 0)))
    .setIndices(accessor(document, 'SCALAR', Uint16Array.of(0, 1, 2, 2, 1, 3)));
  primitive.setMaterial(material(document));
  const node = document.createNode().setMesh(document.createMesh().addPrimitive(primitive));
  document.getRoot().setDefaultScene(document.createScene().addChild(node));
  return document;
};

/** A PNG whose pixels are given row by row from the top, three bytes each. */
export const png = (
  width: number,
  height: number,
  pixel: (x: number, y: number) => readonly number[],
): Uint8Array<ArrayBuffer> =>
  encode({
    width,
    height,
    channels: 3,
    depth: 8,
    data: Uint8Array.from({ length: width * height * 3 }, (_, i) => {
      const at = Math.floor(i / 3);
      return pixel(at % width, Math.floor(at / width))[i % 3] ?? 0;
    }),
  }) as Uint8Array<ArrayBuffer>;
