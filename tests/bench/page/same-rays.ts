import type { WebGLRenderer, WebGLRenderTarget } from 'three';
import type { BareKernel, Rays } from './bare-kernel.ts';

/** The fourth or another number of every texel. */
const numbersOf = (gl: WebGLRenderer, target: WebGLRenderTarget, channel: number): Float32Array => {
  const { width, height, texture } = target;
  const isFloat = texture.type === 1015;
  const values = isFloat ? new Float32Array(width * height * 4) : new Uint8Array(width * height * 4);
  gl.readRenderTargetPixels(target, 0, 0, width, height, values);
  return Float32Array.from({ length: width * height }, (_, i) => values[4 * i + channel] as number);
};

/** How many rays there are to trace. */
export const countOf = (gl: WebGLRenderer, rays: Rays): number =>
  numbersOf(gl, rays, 3).reduce((sum, limit) => sum + (limit > 0 ? 1 : 0), 0);

/** Texels that may differ, as a share: two programs may round a ray that grazes an edge apart. */
const mostDifferent = 1e-4;

const refuse = (count: number, of: number, what: string): void => {
  if (of === 0) throw new Error(`${what}: there are no rays`);
  if (count > mostDifferent * of) throw new Error(`${what}: ${count} of ${of} texels differ`);
};

/** The bare walk from the camera must have met, texel by texel, the triangles that the renderer met. */
export const checkHits = (gl: WebGLRenderer, bare: BareKernel, hits: WebGLRenderTarget): void => {
  const different = numbersOf(gl, bare.differenceTo(hits), 0);
  refuse(
    different.reduce((sum, value) => sum + (value > 0 ? 1 : 0), 0),
    different.length,
    'first hits of the bare walk against the renderer’s',
  );
};

/**
 * The bare walk must leave free, texel by texel, the rays whose light the renderer lets in.
 *
 * @param lit light of this one sample and source, over nothing
 */
export const checkLight = (gl: WebGLRenderer, bare: BareKernel, rays: Rays, lit: WebGLRenderTarget): void => {
  const limits = numbersOf(gl, rays, 3);
  const met = numbersOf(gl, bare.walkToLight(rays), 0);
  const light = numbersOf(gl, lit, 0);
  let [traced, different] = [0, 0];
  limits.forEach((limit, i) => {
    if (limit > 0) traced++;
    const isFree = limit > 0 && met[i] === 0;
    if (isFree !== (light[i] as number) > 0) different++;
  });
  refuse(different, traced, 'rays that the bare walk leaves free against texels that the renderer lights');
};
