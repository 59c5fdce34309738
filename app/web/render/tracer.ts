import type { WebGLRenderer, WebGLRenderTarget } from 'three';
import type { CameraView } from '../../../core/camera/camera-view.ts';
import { dimension, sharedSampleNumber } from '../../../core/trace/sequence.ts';
import type { Stage } from '../../../core/world/stage.ts';
import type { Source } from '../../../core/world/world.ts';
import { FullScreenPass } from './full-screen-pass.ts';
import { firstHitFragment } from './shaders/first-hit.frag.ts';
import { lightFragment } from './shaders/light.frag.ts';
import { createStageTextures, type StageTextures } from './stage-textures.ts';
import { cameraUniforms, setCamera, setSource, setStage, sourceUniforms, stageUniforms } from './uniforms.ts';

/** Rows [from, to) of a target. */
export interface Band {
  readonly from: number;
  readonly to: number;
}

/** The two tracing passes over one stage: first hits of a sample, and one sample of one source over them. */
export class Tracer {
  private readonly gl: WebGLRenderer;
  private stage: Stage | null = null;
  private textures: StageTextures | null = null;
  private readonly firstHits = new FullScreenPass(
    firstHitFragment,
    { ...stageUniforms(), ...cameraUniforms() },
    { STACK_SIZE: 24 },
  );
  private readonly light = new FullScreenPass(
    lightFragment,
    {
      ...stageUniforms(),
      ...cameraUniforms(),
      ...sourceUniforms(),
      firstHits: { value: null as unknown },
      meanSoFar: { value: null as unknown },
    },
    { STACK_SIZE: 24 },
  );

  constructor(gl: WebGLRenderer) {
    this.gl = gl;
  }

  /** Uploads a stage if it is not the present one; true when it changed. */
  setStage(stage: Stage): boolean {
    if (stage === this.stage) return false;
    this.textures?.dispose();
    this.stage = stage;
    this.textures = createStageTextures(stage);
    for (const pass of [this.firstHits, this.light]) {
      setStage(pass.uniforms, this.textures);
      pass.define('STACK_SIZE', this.textures.stackSize);
    }
    return true;
  }

  /** First hits of a sample into a record target. */
  traceFirstHits(view: CameraView, sample: number, target: WebGLRenderTarget, band: Band): void {
    setCamera(this.firstHits.uniforms, view, target, sample);
    this.firstHits.draw(this.gl, target, band.from, band.to);
  }

  /** Running mean after one more sample of a source: reads `before`, writes `after`; both differ. */
  traceLight(
    view: CameraView,
    source: Source,
    sample: number,
    hits: WebGLRenderTarget,
    before: WebGLRenderTarget | null,
    after: WebGLRenderTarget,
    band: Band,
  ): void {
    const u = this.light.uniforms;
    setCamera(u, view, after, sample);
    setSource(u, source, sharedSampleNumber(sample, dimension.time));
    u.firstHits.value = hits.texture;
    u.meanSoFar.value = before?.texture ?? null;
    this.light.draw(this.gl, after, band.from, band.to);
  }

  dispose(): void {
    this.textures?.dispose();
    this.firstHits.dispose();
    this.light.dispose();
  }
}
