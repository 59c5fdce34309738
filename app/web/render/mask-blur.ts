import {
  HalfFloatType,
  NearestFilter,
  RedFormat,
  type Texture,
  Vector2,
  type WebGLRenderer,
  WebGLRenderTarget,
} from 'three';
import { leastSigma } from '../../../core/trace/feather.ts';
import { FullScreenPass } from './full-screen-pass.ts';
import type { Size } from './layer-store.ts';
import { featherFragment } from './shaders/feather.frag.ts';

/** A mask as far as it is traced. */
export interface TracedMask {
  readonly texture: Texture;
  readonly samples: number;
}

interface SoftMask {
  samples: number;
  readonly target: WebGLRenderTarget;
}

/** One number a texel, good to a thousandth. */
const maskTarget = ({ width, height }: Size): WebGLRenderTarget =>
  new WebGLRenderTarget(width, height, {
    depthBuffer: false,
    stencilBuffer: false,
    generateMipmaps: false,
    format: RedFormat,
    type: HalfFloatType,
    minFilter: NearestFilter,
    magFilter: NearestFilter,
  });

/** Softens masks, and keeps them as long as they are asked for. */
export class MaskBlur {
  private readonly gl: WebGLRenderer;
  private readonly kept = new Map<string, SoftMask>();
  private readonly asked = new Set<string>();
  private between: WebGLRenderTarget | null = null;
  private readonly pass = new FullScreenPass(featherFragment, {
    mask: { value: null as Texture | null },
    pictureSize: { value: new Vector2() },
    way: { value: new Vector2() },
    sigma: { value: 0 },
  });

  constructor(gl: WebGLRenderer) {
    this.gl = gl;
  }

  /**
   * A mask of the picture's size with soft edges.
   *
   * @param sigma standard deviation in pixels of the picture
   */
  soft({ texture, samples }: TracedMask, sigma: number, size: Size): Texture {
    const key = `${texture.uuid}|${sigma}|${size.width}x${size.height}`;
    this.asked.add(key);
    const known = this.kept.get(key);
    if (known?.samples === samples) return known.target.texture;
    const soft = known ?? { samples, target: maskTarget(size) };
    soft.samples = samples;
    this.kept.set(key, soft);
    this.blur(texture, sigma, soft.target);
    return soft.target.texture;
  }

  private blur(mask: Texture, sigma: number, result: WebGLRenderTarget): void {
    const { width, height } = result;
    if (this.between?.width !== width || this.between.height !== height) {
      this.between?.dispose();
      this.between = maskTarget({ width, height });
    }
    const u = this.pass.uniforms;
    u.pictureSize.value.set(width, height);
    u.sigma.value = sigma < leastSigma ? 0 : sigma;
    u.mask.value = mask;
    u.way.value.set(1, 0);
    this.pass.draw(this.gl, this.between);
    u.mask.value = this.between.texture;
    u.way.value.set(0, 1);
    this.pass.draw(this.gl, result);
  }

  /** Lets go of masks that were not asked for since the last time. */
  trim(): void {
    for (const [key, { target }] of this.kept)
      if (!this.asked.has(key)) {
        target.dispose();
        this.kept.delete(key);
      }
    this.asked.clear();
  }

  dispose(): void {
    this.asked.clear();
    this.trim();
    this.between?.dispose();
    this.pass.dispose();
  }
}
