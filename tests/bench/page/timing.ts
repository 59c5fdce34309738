import type { WebGLRenderer, WebGLRenderTarget } from 'three';
import type { Size } from '../../../app/web/render/layer-store.ts';

export const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] as number;

/** The card's own name, as the driver gives it. */
export const cardName = (gl: WebGLRenderer): string => {
  const context = gl.getContext();
  const info = context.getExtension('WEBGL_debug_renderer_info');
  return String(context.getParameter(info ? info.UNMASKED_RENDERER_WEBGL : context.RENDERER));
};

/** Waits for the card: a pixel read back can’t come before it is drawn. */
export const finish = (gl: WebGLRenderer, target: WebGLRenderTarget | null): void => {
  const isFloat = target?.texture.type === 1015;
  if (target) gl.readRenderTargetPixels(target, 0, 0, 1, 1, isFloat ? new Float32Array(4) : new Uint8Array(4));
};

/** Milliseconds of some work, the card’s part included. */
export const timed = (gl: WebGLRenderer, work: () => WebGLRenderTarget | null): number => {
  const start = performance.now();
  finish(gl, work());
  return performance.now() - start;
};

/** A number of the page’s address, or what it is where the address doesn’t say. */
export const numberIn = (query: URLSearchParams, name: string, otherwise: number): number =>
  query.has(name) ? Number(query.get(name)) : otherwise;

/** Numbers of the page’s address, parted by commas. */
export const numbersIn = (query: URLSearchParams, name: string, otherwise: readonly number[]): number[] =>
  query.get(name)?.split(',').map(Number) ?? [...otherwise];

/** `width` and `height` of the page’s address. */
export const sizeIn = (query: URLSearchParams, width = 1280, height = 720): Size => ({
  width: numberIn(query, 'width', width),
  height: numberIn(query, 'height', height),
});
