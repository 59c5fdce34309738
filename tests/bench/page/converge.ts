import type { WebGLRenderer, WebGLRenderTarget } from 'three';
import { LayerRenderer } from '../../../app/web/render/layer-renderer.ts';
import type { Size } from '../../../app/web/render/layer-store.ts';
import { type LampKind, type LitScene, litPebbles, sceneOf } from './lit-pebbles.ts';
import type { OtherTracer } from './other-tracer.ts';
import { goRoad, type Road, type Runner } from './road.ts';
import { finish } from './timing.ts';

export interface Convergence {
  readonly kind: LampKind;
  readonly lamps: number;
  readonly triangles: number;
  readonly ours: Road;
  readonly theirs: Road;
  /** Their time over ours. */
  readonly timesFaster: number;
  /**
   * Mean of our reference over that of theirs: near 1, as both show the same lamps, triangles and camera, but above it, for
   * reasons that are in their source (see `OtherTracer`).
   */
  readonly meanRatio: number;
}

const redOf = (gl: WebGLRenderer, target: WebGLRenderTarget): Float32Array => {
  const { width, height } = target;
  const rgba = new Float32Array(width * height * 4);
  gl.readRenderTargetPixels(target, 0, 0, width, height, rgba);
  return Float32Array.from({ length: width * height }, (_, i) => rgba[4 * i] as number);
};

/** All lamps together at one lumen each, as the sum of their layers. */
const ourRunner = (gl: WebGLRenderer, { world, frame, lights }: LitScene, size: Size) => {
  const renderer = new LayerRenderer(gl, { maxSamples: 1e6, coarseFirst: false });
  const wanted = lights.map(({ id, source }) => ({ label: id, view: frame.view, source, bounces: 0 as const }));
  const layers = renderer.want(world.stage, wanted, size);
  const targets = () => layers.flatMap(({ full }) => full ?? []);
  const runner: Runner = {
    runTo: (samples) => renderer.runTo(samples),
    read: () => {
      const parts = targets().map((target) => redOf(gl, target));
      return (parts[0] as Float32Array).map((_, i) => parts.reduce((sum, part) => sum + (part[i] as number), 0));
    },
    wait: () => finish(gl, targets().at(-1) ?? null),
  };
  return { runner, dispose: () => renderer.dispose() };
};

/** Both tracers over the same pebbles, lamps and camera, each against its own reference, in about so many seconds each. */
export const benchConvergence = async (
  gl: WebGLRenderer,
  other: OtherTracer,
  triangles: number,
  kind: LampKind,
  lamps: number,
  size: Size,
  seconds: number,
): Promise<Convergence> => {
  const scene = sceneOf(litPebbles(triangles, kind, lamps));
  const mine = ourRunner(gl, scene, size);
  const ours = goRoad(mine.runner, seconds);
  mine.dispose();
  await other.show(scene, size);
  let target: WebGLRenderTarget | null = null;
  const theirs = goRoad(
    {
      runTo: (samples) => {
        target = other.runTo(samples);
      },
      read: () => redOf(gl, target as WebGLRenderTarget),
      wait: () => finish(gl, target),
    },
    seconds,
  );
  return {
    kind,
    lamps,
    triangles: scene.triangles,
    ours,
    theirs,
    timesFaster: theirs.milliseconds / ours.milliseconds,
    meanRatio: ours.referenceMean / theirs.referenceMean,
  };
};
