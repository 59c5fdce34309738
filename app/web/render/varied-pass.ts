import type { WebGLRenderer, WebGLRenderTarget } from 'three';
import { FullScreenPass, type Uniforms } from './full-screen-pass.ts';

/** What a program is compiled for; a truth counts as 1. */
export type Variant = Readonly<Record<string, number | boolean>>;

/**
 * A fragment shader compiled apart for each thing that it is asked to do, with the same uniforms for all: a program that
 * does one thing takes less than half the time of one that chooses at every pixel. All that are met are kept, so what they
 * are told apart by must be few.
 */
export class VariedPass<U extends Uniforms> {
  readonly uniforms: U;
  private readonly fragmentShader: string;
  private readonly passes = new Map<string, FullScreenPass<U>>();

  constructor(fragmentShader: string, uniforms: U) {
    this.fragmentShader = fragmentShader;
    this.uniforms = uniforms;
  }

  /** Draws all of a target; null draws to the screen’s present viewport. */
  draw(gl: WebGLRenderer, target: WebGLRenderTarget | null, variant: Variant): void {
    const defines = Object.fromEntries(Object.entries(variant).map(([name, value]) => [name, Number(value)]));
    const key = JSON.stringify(defines);
    let pass = this.passes.get(key);
    if (!pass) {
      pass = new FullScreenPass(this.fragmentShader, this.uniforms, defines);
      this.passes.set(key, pass);
    }
    pass.draw(gl, target);
  }

  dispose(): void {
    for (const pass of this.passes.values()) pass.dispose();
    this.passes.clear();
  }
}
