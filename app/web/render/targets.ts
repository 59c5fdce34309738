import {
  FloatType,
  LinearFilter,
  NearestFilter,
  RGBAFormat,
  RGBAIntegerFormat,
  UnsignedIntType,
  type WebGLRenderer,
  WebGLRenderTarget,
} from 'three';

const plain = { depthBuffer: false, stencilBuffer: false, generateMipmaps: false } as const;

/** Four 32-bit floats a texel; smooth when magnified where the card can. */
export const floatTarget = (gl: WebGLRenderer, width: number, height: number): WebGLRenderTarget => {
  const smooth = gl.getContext().getExtension('OES_texture_float_linear') ? LinearFilter : NearestFilter;
  return new WebGLRenderTarget(width, height, {
    ...plain,
    format: RGBAFormat,
    type: FloatType,
    minFilter: smooth,
    magFilter: smooth,
  });
};

/** Four 32-bit integers a texel, for first hits. */
export const recordTarget = (width: number, height: number): WebGLRenderTarget =>
  new WebGLRenderTarget(width, height, {
    ...plain,
    format: RGBAIntegerFormat,
    internalFormat: 'RGBA32UI',
    type: UnsignedIntType,
    minFilter: NearestFilter,
    magFilter: NearestFilter,
  });

/** Bytes that a target of four 32-bit numbers takes. */
export const targetBytes = (target: { width: number; height: number }): number => target.width * target.height * 16;
