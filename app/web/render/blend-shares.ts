import type { Texture, WebGLRenderer, WebGLRenderTarget } from 'three';
import type { TargetOf } from './frame-sum.ts';
import { FullScreenPass } from './full-screen-pass.ts';
import type { Size } from './layer-store.ts';
import { sharesFragment } from './shaders/shares.frag.ts';

/** A frame's weight in a blend, and its mask; null = everywhere. */
export interface BlendShare {
  readonly weight: number;
  readonly mask: Texture | null;
}

/** Sums what the frames of a blend share at each pixel. */
export class BlendShares {
  private readonly gl: WebGLRenderer;
  private readonly targetOf: TargetOf;
  private readonly pass = new FullScreenPass(sharesFragment, {
    before: { value: null as Texture | null },
    startFresh: { value: true },
    frameWeight: { value: 1 },
    isMasked: { value: false },
    mask: { value: null as Texture | null },
  });

  constructor(gl: WebGLRenderer, targetOf: TargetOf) {
    this.gl = gl;
    this.targetOf = targetOf;
  }

  /** Kept until the next are summed; null without frames. */
  sum(shares: readonly BlendShare[], size: Size): Texture | null {
    const u = this.pass.uniforms;
    let sum: WebGLRenderTarget | null = null;
    for (const [i, { weight, mask }] of shares.entries()) {
      u.before.value = sum?.texture ?? null;
      u.startFresh.value = sum === null;
      u.frameWeight.value = weight;
      u.isMasked.value = mask !== null;
      u.mask.value = mask;
      const next: WebGLRenderTarget = this.targetOf(`shares-${i % 2}`, size);
      this.pass.draw(this.gl, next);
      sum = next;
    }
    return sum?.texture ?? null;
  }

  dispose(): void {
    this.pass.dispose();
  }
}
