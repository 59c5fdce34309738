import { FloatType, NearestFilter, RGBAFormat, type WebGLRenderer, WebGLRenderTarget } from 'three';
import { FullScreenPass } from '../../../app/web/render/full-screen-pass.ts';
import type { Size } from '../../../app/web/render/layer-store.ts';
import { SourceTables } from '../../../app/web/render/source-tables.ts';
import { createStageTextures, type StageTextures } from '../../../app/web/render/stage-textures.ts';
import {
  cameraUniforms,
  setCamera,
  setSource,
  setStage,
  sourceDefines,
  sourceUniforms,
  stageUniforms,
} from '../../../app/web/render/uniforms.ts';
import type { CameraView } from '../../../core/camera/camera-view.ts';
import type { Stage } from '../../../core/world/stage.ts';
import {
  cameraWalkFragment,
  differenceFragment,
  fetchFragment,
  shadowRaysFragment,
  shadowWalkFragment,
} from './bare-shaders.ts';
import type { TracedLight } from './traced-lights.ts';

const none = { HAS_SHEEN: 0, HAS_CLOTH: 0, HAS_HAZE: 0 };
/** Any will do until a source is known. */
const noLamp = { SOURCE_KIND: 0, LAMP_SHAPE: 0, HAS_MEASURED: 0, HAS_HOLDER: 0, MOMENTS: 1 };
const rayUniforms = () => ({ raysFrom: { value: null as unknown }, raysAlong: { value: null as unknown } });

/** Shadow rays of one sample: origin and limit, direction; a limit of -1 where there is none. */
export type Rays = WebGLRenderTarget;

/**
 * Walks of the renderer’s own tree for the renderer’s own rays, and nothing else. Rays of the camera are made in the kernel,
 * as cheaply as the renderer makes them; shadow rays are written down before anything is timed and fetched by the walk:
 * `fetch` is that fetching alone, to be taken off.
 */
export class BareKernel {
  private readonly gl: WebGLRenderer;
  private readonly textures: StageTextures;
  private readonly tables = new SourceTables();
  private readonly met: WebGLRenderTarget;
  private readonly different: WebGLRenderTarget;
  private readonly shadowRays = new FullScreenPass(
    shadowRaysFragment,
    { ...stageUniforms(), ...cameraUniforms(), ...sourceUniforms(), firstHits: { value: null as unknown } },
    { STACK_SIZE: 24, ...none, ...noLamp },
  );
  private readonly fromCamera = new FullScreenPass(
    cameraWalkFragment,
    { ...stageUniforms(), ...cameraUniforms() },
    { STACK_SIZE: 24 },
  );
  private readonly toLight = new FullScreenPass(
    shadowWalkFragment,
    { ...stageUniforms(), ...rayUniforms() },
    { STACK_SIZE: 24 },
  );
  private readonly fetched = new FullScreenPass(fetchFragment, rayUniforms());
  private readonly difference = new FullScreenPass(differenceFragment, {
    firstHits: { value: null as unknown },
    walked: { value: null as unknown },
  });

  constructor(gl: WebGLRenderer, stage: Stage, { width, height }: Size) {
    this.gl = gl;
    this.textures = createStageTextures(stage);
    const exact = { depthBuffer: false, minFilter: NearestFilter, magFilter: NearestFilter } as const;
    this.met = new WebGLRenderTarget(width, height, exact);
    this.different = new WebGLRenderTarget(width, height, exact);
    for (const pass of [this.shadowRays, this.fromCamera, this.toLight]) {
      setStage(pass.uniforms, this.textures);
      pass.define('STACK_SIZE', this.textures.stackSize);
    }
  }

  private makeRays(): Rays {
    const { width, height } = this.met;
    return new WebGLRenderTarget(width, height, {
      count: 2,
      depthBuffer: false,
      format: RGBAFormat,
      type: FloatType,
      minFilter: NearestFilter,
      magFilter: NearestFilter,
    });
  }

  /** Writes down the rays that the renderer traces for the light of a sample over its first hits. */
  raysToLight(
    view: CameraView,
    stage: Stage,
    source: TracedLight['source'],
    sample: number,
    hits: WebGLRenderTarget,
    rays = this.makeRays(),
  ): Rays {
    const u = this.shadowRays.uniforms;
    setCamera(u, view, rays, sample);
    setSource(u, stage, source, sample, this.tables);
    for (const [name, value] of Object.entries(sourceDefines(source))) this.shadowRays.define(name, value);
    u.firstHits.value = hits.texture;
    this.shadowRays.draw(this.gl, rays);
    return rays;
  }

  walkFromCamera(view: CameraView, sample: number): WebGLRenderTarget {
    setCamera(this.fromCamera.uniforms, view, this.met, sample);
    this.fromCamera.draw(this.gl, this.met);
    return this.met;
  }

  private overRays(pass: BareKernel['toLight' | 'fetched'], rays: Rays): WebGLRenderTarget {
    pass.uniforms.raysFrom.value = rays.textures[0];
    pass.uniforms.raysAlong.value = rays.textures[1];
    pass.draw(this.gl, this.met);
    return this.met;
  }

  walkToLight(rays: Rays): WebGLRenderTarget {
    return this.overRays(this.toLight, rays);
  }

  fetch(rays: Rays): WebGLRenderTarget {
    return this.overRays(this.fetched, rays);
  }

  /** Where the renderer’s first hits and those that the bare walk met last are not the same triangles. */
  differenceTo(hits: WebGLRenderTarget): WebGLRenderTarget {
    this.difference.uniforms.firstHits.value = hits.texture;
    this.difference.uniforms.walked.value = this.met.texture;
    this.difference.draw(this.gl, this.different);
    return this.different;
  }

  dispose(): void {
    const passes = [this.shadowRays, this.fromCamera, this.toLight, this.fetched, this.difference];
    for (const thing of [this.textures, this.tables, this.met, this.different, ...passes]) thing.dispose();
  }
}
