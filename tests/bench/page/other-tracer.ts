import type { WebGLRenderer, WebGLRenderTarget } from 'three';
import { WebGLPathTracer } from 'three-gpu-pathtracer';
import type { Size } from '../../../app/web/render/layer-store.ts';
import type { LitScene } from './lit-pebbles.ts';
import { cameraOf, otherSceneOf } from './other-scene.ts';

/**
 * three-gpu-pathtracer over the same triangles, lamps and camera. One bounce in its counting: direct light alone. One is
 * enough for all scenes: its program takes long to compile.
 *
 * Its pictures come out darker than ours by some per cent, for what its source does (0.0.26):
 * - Shadow rays start on the flat triangle; ours start on the smooth surface that it stands for, which keeps pebbles from
 *   shading themselves where light grazes. By an estimate of ours in Node, about 3 %.
 * - `main` draws a way on before it takes light, and starts the shadow ray under the face where that way leads below it, so
 *   that the light is lost. Half of these ways are its sheen’s, though the sheen is black here, and often lead below at
 *   grazing looks. By the same estimate 2 to 4 %.
 * - What lights of an area would add by being met, `misHeuristic` takes off their direct light, and with one bounce no way
 *   goes far enough to meet them: under 0.5 % here, as they are far.
 * - A tube is a flat strip with them: darker to the sides, 2 %.
 * Together 1.05 to 1.09, against 1.03 to 1.09 measured: within 2 % of each scene but for six tubes, which they show 6 %
 * brighter than that; why is not known.
 */
export class OtherTracer {
  private readonly gl: WebGLRenderer;
  private readonly tracer: WebGLPathTracer;

  constructor(gl: WebGLRenderer) {
    this.gl = gl;
    this.tracer = new WebGLPathTracer(gl);
    Object.assign(this.tracer, {
      bounces: 1,
      transmissiveBounces: 0,
      renderToCanvas: false,
      rasterizeScene: false,
      renderDelay: 0,
      minSamples: 0,
    });
    this.tracer.tiles.set(1, 1);
  }

  /** Takes up a scene, compiles what it needs, and waits until samples come. */
  async show(scene: LitScene, { width, height }: Size): Promise<void> {
    this.gl.setPixelRatio(1);
    this.gl.setSize(width, height, false);
    this.tracer.setScene(otherSceneOf(scene), cameraOf(scene));
    const start = performance.now();
    while (this.tracer.samples < 2) {
      if (performance.now() - start > 600_000) throw new Error('the other tracer does not start');
      this.tracer.renderSample();
      await new Promise((resolve) => setTimeout(resolve, 5));
    }
    this.tracer.reset();
  }

  /** Goes on to so many samples. */
  runTo(samples: number): WebGLRenderTarget {
    while (this.tracer.samples < samples) this.tracer.renderSample();
    return this.tracer.target;
  }

  dispose(): void {
    this.tracer.dispose();
  }
}
