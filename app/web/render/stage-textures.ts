import { DataTexture, FloatType, NearestFilter, RGBAFormat } from 'three';
import { throughSheenSteps } from '../../../core/photometry/through-sheen.ts';
import type { Stage } from '../../../core/world/stage.ts';
import type { StageFinish } from '../../../core/world/stage-finish.ts';
import { finishTexels } from './shaders/surface.glsl.ts';

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

/** Three texels a triangle, 256 triangles a row; the fourth number of a corner is what `extra` gives for it. */
const cornerTexture = (values: Float32Array, extra: (triangle: number, corner: number) => number): DataTexture => {
  const triangles = values.length / 9;
  return floatTexture(768, triangles * 3, (data) => {
    for (let i = 0; i < triangles * 3; i++) {
      data[i * 4] = values[i * 3] as number;
      data[i * 4 + 1] = values[i * 3 + 1] as number;
      data[i * 4 + 2] = values[i * 3 + 2] as number;
      data[i * 4 + 3] = extra(Math.floor(i / 3), i % 3);
    }
  });
};

/** A stage as the shaders read it. Packing is described beside the fetches in shaders/tree.glsl.ts. */
export interface StageTextures {
  readonly nodes: DataTexture;
  readonly corners: DataTexture;
  readonly normals: DataTexture;
  readonly finishes: DataTexture;
  readonly stackSize: number;
  /** Whether anything is glossy. */
  readonly hasSheen: boolean;
  /** Whether anything lets light through. */
  readonly hasCloth: boolean;
  dispose(): void;
}

/** Packing is described beside `finishTexels`; a roughness of -1 is matt, an index of 0 metal. */
const finishNumbers = ({ reflectance, transmittance, sheen }: StageFinish): number[] => [
  ...[...reflectance, transmittance],
  ...(sheen ? [...sheen.normalReflectance, sheen.alpha] : [0, 0, 0, -1]),
  ...[sheen?.refractiveIndex ?? 0, sheen?.through?.mean ?? 0, 0, 0],
  ...(sheen?.through?.atRoots ?? Array<number>(throughSheenSteps).fill(0)),
];

/** Stack sizes the shaders are compiled for; a deeper tree takes the next. */
const stackSizes = [24, 32, 48, 64];

/** Uploads a stage. The caller disposes of it. */
export const createStageTextures = (stage: Stage): StageTextures => {
  const { nodes, corners, depth } = stage.tree;
  const textures = {
    nodes: floatTexture(1024, nodes.length / 4, (data) => data.set(nodes)),
    // the finish, and the subject by its index, 0 for the ground
    corners: cornerTexture(corners, (t, c) =>
      c === 1 ? (stage.subjectOfTriangle[t] as number) + 1 : (stage.finishOfTriangle[t] as number),
    ),
    normals: cornerTexture(stage.normals, (t, c) => stage.tints?.[t * 3 + c] ?? 1),
    finishes: floatTexture(64 * finishTexels, stage.finishes.length * finishTexels, (data) =>
      data.set(stage.finishes.flatMap(finishNumbers)),
    ),
  };
  return {
    ...textures,
    stackSize: stackSizes.find((size) => size > depth + 1) ?? 64,
    hasSheen: stage.finishes.some(({ sheen }) => sheen !== null),
    hasCloth: stage.finishes.some(({ transmittance }) => transmittance > 0),
    dispose: () => {
      for (const texture of Object.values(textures)) texture.dispose();
    },
  };
};
