import type { WebGLRenderTarget } from 'three';
import { recordTarget } from './targets.ts';

/**
 * One target for first hits that are not kept: those of one sample of one shot at a time, whichever was traced last.
 * Shots are told apart as objects.
 */
export class ScratchHits {
  private target: WebGLRenderTarget | null = null;
  private shot: object | null = null;
  private sample = -1;

  /** First hits of a sample of a shot, if they are what it holds. */
  of(shot: object, sample: number): WebGLRenderTarget | null {
    return this.shot === shot && this.sample === sample ? this.target : null;
  }

  /** The target to trace anew; what it held is forgotten. */
  take({ width, height }: { width: number; height: number }): WebGLRenderTarget {
    this.shot = null;
    if (this.target?.width === width && this.target.height === height) return this.target;
    this.target?.dispose();
    this.target = recordTarget(width, height);
    return this.target;
  }

  /** Says what was traced into it. */
  fill(shot: object, sample: number): void {
    this.shot = shot;
    this.sample = sample;
  }

  isTarget(target: WebGLRenderTarget): boolean {
    return target === this.target;
  }

  clear(): void {
    this.target?.dispose();
    this.target = null;
    this.shot = null;
  }
}
