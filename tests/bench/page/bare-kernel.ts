import { FloatType, NearestFilter, RGBAFormat, type WebGLRenderer, WebGLRenderTarget } from 'three';
import { FullScreenPass } from '../../../app/web/render/full-screen-pass.ts';
import type { Size } from '../../../app/web/render/layer-store.ts';
import { airGlsl } from '../../../app/web/render/shaders/air.glsl.ts';
import { cameraGlsl } from '../../../app/web/render/shaders/camera.glsl.ts';
import { discGlsl } from '../../../app/web/render/shaders/disc.glsl.ts';
import { emitterGlsl } from '../../../app/web/render/shaders/emitter.glsl.ts';
import { holderGlsl } from '../../../app/web/render/shaders/holder.glsl.ts';
import { irradianceGlsl } from '../../../app/web/render/shaders/irradiance.glsl.ts';
import { seenEmitterGlsl } from '../../../app/web/render/shaders/seen-emitter.glsl.ts';
import { sequenceGlsl } from '../../../app/web/render/shaders/sequence.glsl.ts';
import { surfaceGlsl } from '../../../app/web/render/shaders/surface.glsl.ts';
import { treeGlsl } from '../../../app/web/render/shaders/tree.glsl.ts';
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
import type { TracedLight } from './traced-lights.ts';

const precision =
  'precision highp float;\nprecision highp int;\nprecision highp usampler2D;\nprecision highp sampler2D;';

/** Writes the camera’s rays: origin and limit, direction. */
const cameraRaysFragment = `${precision}
${sequenceGlsl}
${discGlsl}
${cameraGlsl}
layout(location = 0) out highp vec4 from;
layout(location = 1) out highp vec4 along;
void main() {
  Ray ray = cameraRay(uvec2(gl_FragCoord.xy));
  from = vec4(ray.origin, 1e20);
  along = vec4(ray.direction, 0.0);
}`;

/** Writes the shadow rays that the renderer traces for a sample; a limit of -1 where it traces none. */
const shadowRaysFragment = `${precision}
${treeGlsl}
${sequenceGlsl}
${discGlsl}
${cameraGlsl}
${surfaceGlsl}
${emitterGlsl}
${airGlsl}
${seenEmitterGlsl}
${holderGlsl}
${irradianceGlsl}
uniform usampler2D firstHits;
layout(location = 0) out highp vec4 from;
layout(location = 1) out highp vec4 along;
void main() {
  uvec2 pixel = uvec2(gl_FragCoord.xy);
  uvec4 record = texelFetch(firstHits, ivec2(pixel), 0);
  from = vec4(0.0, 0.0, 0.0, -1.0);
  along = vec4(0.0);
  if (record.x == 0u) return;
  Ray ray = cameraRay(pixel);
  Surface surface = surfaceOf(record, ray.origin, ray.direction);
  vec2 uv = vec2(sampleNumber(sampleIndex, DIM_EMITTERU, pixel), sampleNumber(sampleIndex, DIM_EMITTERV, pixel));
  LightSample light = lightSample(surface.near, uv, Moments(0, sampleNumber(sampleIndex, DIM_MOMENT, pixel)));
  from = vec4(surface.near.shadowOrigin, light.lux > 0.0 ? light.limit : -1.0);
  along = vec4(light.direction, 0.0);
}`;

/** The walk and nothing else: a ray in, met or not out. */
const walkFragment = `${precision}
${treeGlsl}
uniform highp sampler2D raysFrom;
uniform highp sampler2D raysAlong;
out vec4 met;
void main() {
  vec4 from = texelFetch(raysFrom, ivec2(gl_FragCoord.xy), 0);
  vec3 along = texelFetch(raysAlong, ivec2(gl_FragCoord.xy), 0).xyz;
#if CLOSEST == 1
  vec3 hit = vec3(0.0);
  met = vec4(closestHit(from.xyz, along, hit) >= 0);
#else
  met = vec4(from.w > 0.0 && anyHit(from.xyz, along, from.w));
#endif
}`;

const none = { HAS_SHEEN: 0, HAS_CLOTH: 0, HAS_HAZE: 0 };
/** Any will do until a source is known. */
const noLamp = { SOURCE_KIND: 0, LAMP_SHAPE: 0, HAS_MEASURED: 0, HAS_HOLDER: 0, MOMENTS: 1 };
const walkPass = (closest: number) =>
  new FullScreenPass(
    walkFragment,
    { ...stageUniforms(), raysFrom: { value: null as unknown }, raysAlong: { value: null as unknown } },
    { STACK_SIZE: 24, CLOSEST: closest },
  );

/** Rays of one sample, ready for the walk. */
export type Rays = WebGLRenderTarget;

/** Walks of the renderer’s own tree for the renderer’s own rays, which are written down before anything is timed. */
export class BareKernel {
  private readonly gl: WebGLRenderer;
  private readonly textures: StageTextures;
  private readonly tables = new SourceTables();
  private readonly met: WebGLRenderTarget;
  private readonly cameraRays = new FullScreenPass(cameraRaysFragment, cameraUniforms());
  private readonly shadowRays = new FullScreenPass(
    shadowRaysFragment,
    { ...stageUniforms(), ...cameraUniforms(), ...sourceUniforms(), firstHits: { value: null as unknown } },
    { STACK_SIZE: 24, ...none, ...noLamp },
  );
  private readonly closest = walkPass(1);
  private readonly any = walkPass(0);

  constructor(gl: WebGLRenderer, stage: Stage, { width, height }: Size) {
    this.gl = gl;
    this.textures = createStageTextures(stage);
    this.met = new WebGLRenderTarget(width, height, { depthBuffer: false });
    for (const pass of [this.shadowRays, this.closest, this.any]) {
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

  raysOfCamera(view: CameraView, sample: number, rays = this.makeRays()): Rays {
    setCamera(this.cameraRays.uniforms, view, rays, sample);
    this.cameraRays.draw(this.gl, rays);
    return rays;
  }

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

  /** How many rays there are to trace. */
  countOf(rays: Rays): number {
    const { width, height } = rays;
    const values = new Float32Array(width * height * 4);
    this.gl.readRenderTargetPixels(rays, 0, 0, width, height, values);
    let count = 0;
    for (let i = 3; i < values.length; i += 4) if ((values[i] as number) > 0) count++;
    return count;
  }

  /** How many of the rays walked last met something. */
  countMet(): number {
    const { width, height } = this.met;
    const bytes = new Uint8Array(width * height * 4);
    this.gl.readRenderTargetPixels(this.met, 0, 0, width, height, bytes);
    let count = 0;
    for (let i = 0; i < bytes.length; i += 4) if ((bytes[i] as number) > 0) count++;
    return count;
  }

  walk(rays: Rays, kind: 'closest' | 'any'): WebGLRenderTarget {
    const pass = this[kind];
    pass.uniforms.raysFrom.value = rays.textures[0];
    pass.uniforms.raysAlong.value = rays.textures[1];
    pass.draw(this.gl, this.met);
    return this.met;
  }

  dispose(): void {
    for (const thing of [
      this.textures,
      this.tables,
      this.met,
      this.cameraRays,
      this.shadowRays,
      this.closest,
      this.any,
    ])
      thing.dispose();
  }
}
