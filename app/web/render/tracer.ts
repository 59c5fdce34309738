import type { WebGLRenderer, WebGLRenderTarget } from 'three';
import type { CameraView } from '../../../core/camera/camera-view.ts';
import type { Traced } from '../../../core/trace/mask.ts';
import type { Stage } from '../../../core/world/stage.ts';
import type { World } from '../../../core/world/world.ts';
import { FullScreenPass } from './full-screen-pass.ts';
import { bounceFragment } from './shaders/bounce.frag.ts';
import { firstHitFragment } from './shaders/first-hit.frag.ts';
import { lightFragment } from './shaders/light.frag.ts';
import { SourceTables } from './source-tables.ts';
import { createStageTextures, type StageTextures } from './stage-textures.ts';
import {
  cameraUniforms,
  setCamera,
  setSource,
  setStage,
  sourceDefines,
  sourceUniforms,
  stageUniforms,
} from './uniforms.ts';

/** Rows [from, to) of a target. */
export interface Band {
  readonly from: number;
  readonly to: number;
}

const lightPass = (bounces: number, defines: Readonly<Record<string, number>>) =>
  new FullScreenPass(
    bounces > 0 ? bounceFragment : lightFragment,
    {
      ...stageUniforms(),
      ...cameraUniforms(),
      ...sourceUniforms(),
      firstHits: { value: null as unknown },
      meanSoFar: { value: null as unknown },
    },
    { BOUNCES: bounces, ...defines },
  );

/** Programs for light that are kept: more than any one picture needs; one that comes back later is compiled again. */
const mostLightPrograms = 40;

/** What a sample of light is taken of. */
export interface LightTask {
  readonly view: CameraView;
  readonly source: Traced;
  /** 0 = the direct light; else what comes by way of that many other surfaces at most. */
  readonly bounces: World['bounces'];
}

/** The tracing passes over one stage: first hits of a sample, and one sample of one source's light over them. */
export class Tracer {
  private readonly gl: WebGLRenderer;
  private stage: Stage | null = null;
  private textures: StageTextures | null = null;
  private readonly tables = new SourceTables();
  private readonly firstHits = new FullScreenPass(
    firstHitFragment,
    { ...stageUniforms(), ...cameraUniforms() },
    { STACK_SIZE: 24 },
  );
  /**
   * By what they are compiled for, the one used last at the end: a program that does one thing is quicker than one that
   * chooses.
   */
  private readonly light = new Map<string, ReturnType<typeof lightPass>>();

  private readonly mostPrograms: number;

  constructor(gl: WebGLRenderer, mostPrograms = mostLightPrograms) {
    this.gl = gl;
    this.mostPrograms = mostPrograms;
  }

  /** Uploads a stage if it is not the present one; true when it changed. */
  setStage(stage: Stage): boolean {
    if (stage === this.stage) return false;
    this.textures?.dispose();
    this.stage = stage;
    this.textures = createStageTextures(stage);
    setStage(this.firstHits.uniforms, this.textures);
    this.firstHits.define('STACK_SIZE', this.textures.stackSize);
    for (const pass of this.light.values()) this.setStageOf(pass, this.textures, stage);
    return true;
  }

  private setStageOf({ uniforms }: ReturnType<typeof lightPass>, textures: StageTextures, { air }: Stage): void {
    setStage(uniforms, textures);
    uniforms.haze.value.set(air?.scatterPerMetre ?? 0, air?.topMetres ?? 0);
  }

  private lightPassFor({ source, bounces }: LightTask): ReturnType<typeof lightPass> {
    const { stage, textures } = this;
    if (!stage || !textures) throw new Error('light is traced over a stage: set one first');
    const defines = {
      ...sourceDefines(source),
      STACK_SIZE: textures.stackSize,
      HAS_SHEEN: textures.hasSheen ? 1 : 0,
      HAS_CLOTH: textures.hasCloth ? 1 : 0,
      HAS_HAZE: stage.air ? 1 : 0,
    };
    const key = JSON.stringify([bounces, defines]);
    const known = this.light.get(key);
    const pass = known ?? lightPass(bounces, defines);
    if (!known) this.setStageOf(pass, textures, stage);
    this.light.delete(key);
    this.light.set(key, pass);
    // nobody holds a program from one drawing to the next, so that the one least used lately is free to go
    for (const [oldest, unused] of this.light) {
      if (this.light.size <= this.mostPrograms) break;
      unused.dispose();
      this.light.delete(oldest);
    }
    return pass;
  }

  /** First hits of a sample into a record target. */
  traceFirstHits(view: CameraView, sample: number, target: WebGLRenderTarget, band: Band): void {
    setCamera(this.firstHits.uniforms, view, target, sample);
    this.firstHits.draw(this.gl, target, band.from, band.to);
  }

  /** Running mean after one more sample of light: reads `before`, writes `after`; both differ. */
  traceLight(
    task: LightTask,
    sample: number,
    hits: WebGLRenderTarget,
    before: WebGLRenderTarget | null,
    after: WebGLRenderTarget,
    band: Band,
  ): void {
    const { view, source } = task;
    const pass = this.lightPassFor(task);
    const u = pass.uniforms;
    setCamera(u, view, after, sample);
    if (this.stage) setSource(u, this.stage, source, sample, this.tables);
    u.firstHits.value = hits.texture;
    u.meanSoFar.value = before?.texture ?? null;
    pass.draw(this.gl, after, band.from, band.to);
  }

  dispose(): void {
    this.textures?.dispose();
    this.tables.dispose();
    for (const pass of [this.firstHits, ...this.light.values()]) pass.dispose();
  }
}
