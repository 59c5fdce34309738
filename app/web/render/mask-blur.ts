import { type Texture, Vector2, type WebGLRenderer, type WebGLRenderTarget } from 'three';
import { leastSigma } from '../../../core/trace/feather.ts';
import { FullScreenPass } from './full-screen-pass.ts';
import { featherFragment } from './shaders/feather.frag.ts';

/** Softens masks. */
export class MaskBlur {
  private readonly pass = new FullScreenPass(featherFragment, {
    mask: { value: null as Texture | null },
    pictureSize: { value: new Vector2() },
    way: { value: new Vector2() },
    sigma: { value: 0 },
  });

  /**
   * @param sigma standard deviation in pixels of the picture
   * @param targets of the picture's size, both written: between, and for the result
   */
  blur(gl: WebGLRenderer, mask: Texture, sigma: number, between: WebGLRenderTarget, result: WebGLRenderTarget): void {
    const u = this.pass.uniforms;
    u.pictureSize.value.set(result.width, result.height);
    u.sigma.value = sigma < leastSigma ? 0 : sigma;
    u.mask.value = mask;
    u.way.value.set(1, 0);
    this.pass.draw(gl, between);
    u.mask.value = between.texture;
    u.way.value.set(0, 1);
    this.pass.draw(gl, result);
  }

  dispose(): void {
    this.pass.dispose();
  }
}
