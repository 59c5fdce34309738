import { DataTexture, FloatType, NearestFilter, RGBAFormat } from 'three';
import type { Stage } from '../../../core/world/stage.ts';

const floatTexture = (width: number, texels: number, fill: (data: Float32Array) => void): DataTexture => {
  const height = Math.max(Math.ceil(texels / width), 1);
  const data = new Float32Array(width * height * 4);
  fill(data);
  const texture = new DataTexture(data, width, height, RGBAFormat, FloatType);
  texture.minFilter = NearestFilter;
  texture.magFilter = NearestFilter;
  texture.needsUpdate = true;
  return texture;
};

/** Three texels a triangle, 256 triangles a row; the fourth number of a corner is what `extra` gives for its triangle. */
const cornerTexture = (values: Float32Array, extra: (triangle: number) => number): DataTexture => {
  const triangles = values.length / 9;
  return floatTexture(768, triangles * 3, (data) => {
    for (let t = 0; t < triangles; t++)
      for (let c = 0; c < 3; c++) {
        data.set(values.subarray(t * 9 + c * 3, t * 9 + c * 3 + 3), (t * 3 + c) * 4);
        data[(t * 3 + c) * 4 + 3] = extra(t);
      }
  });
};

/** A stage as the shaders read it. Packing is described beside the fetches in shaders/tree.glsl.ts. */
export interface StageTextures {
  readonly nodes: DataTexture;
  readonly corners: DataTexture;
  readonly normals: DataTexture;
  readonly reflectances: DataTexture;
  readonly stackSize: number;
  dispose(): void;
}

/** Stack sizes the shaders are compiled for; a deeper tree takes the next. */
const stackSizes = [24, 32, 48, 64];

/** Uploads a stage. The caller disposes of it. */
export const createStageTextures = (stage: Stage): StageTextures => {
  const { nodes, corners, depth } = stage.tree;
  const textures = {
    nodes: floatTexture(1024, nodes.length / 4, (data) => data.set(nodes)),
    corners: cornerTexture(corners, (t) => stage.finishOfTriangle[t] as number),
    normals: cornerTexture(stage.normals, () => 0),
    reflectances: floatTexture(256, stage.finishes.length, (data) =>
      stage.finishes.forEach(({ reflectance }, i) => {
        data.set(reflectance, i * 4);
      }),
    ),
  };
  return {
    ...textures,
    stackSize: stackSizes.find((size) => size > depth + 1) ?? 64,
    dispose: () => {
      for (const texture of Object.values(textures)) texture.dispose();
    },
  };
};
