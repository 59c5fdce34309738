import type { WebGLRenderer } from 'three';
import { LayerRenderer } from '../../../app/web/render/layer-renderer.ts';
import { buildWorld, type World } from '../../../core/world/world.ts';
import { type Growth, pebbleSetup } from '../../core/support/pebble-setup.ts';
import { type TracedLight, tracedLights } from './traced-lights.ts';

/** Times in milliseconds of one sample, least of several rounds; rounds of all scenes take turns within one run. */
export interface SampleTimes {
  readonly triangles: number;
  /** First hits, and the lamp's shadowed light on them. */
  readonly sampleMs: number;
  /** The light alone, first hits kept: what a moved lamp costs. */
  readonly lightMs: number;
}

interface Scene {
  readonly world: World;
  readonly renderer: LayerRenderer;
  readonly triangles: number;
  sampleMs: number;
  lightMs: number;
}

const moved = (source: TracedLight['source'], metres: number): TracedLight['source'] =>
  source.kind === 'lamp'
    ? {
        ...source,
        path: source.path.map((p) => ({ ...p, position: [p.position[0], p.position[1], p.position[2] + metres] })),
      }
    : source;

/** The same view over scenes of ever more triangles; waits for the card by reading a pixel back. */
export const benchGrowth = (
  gl: WebGLRenderer,
  growth: Growth,
  sizes: readonly number[],
  size: { width: number; height: number },
  rounds: number,
): SampleTimes[] => {
  const pixel = new Float32Array(4);
  const trace = ({ world, renderer }: Scene, step: number, metres: number): number => {
    const light = tracedLights(world.frames[0] as World['frames'][number])[0] as TracedLight;
    const [x, y, z] = world.view.position;
    // the camera steps aside, so that first hits are new
    const view = { ...world.view, position: [x + step * 0.01, y, z] as const };
    const start = performance.now();
    const [layer] = renderer.want(
      world.stage,
      [{ label: 'p', view, source: moved(light.source, metres), bounces: 0 }],
      size,
    );
    renderer.runTo(1);
    if (layer?.full) gl.readRenderTargetPixels(layer.full, 0, 0, 1, 1, pixel);
    return performance.now() - start;
  };
  const scenes = sizes.map((triangles): Scene => {
    const setup = pebbleSetup(triangles, growth);
    const world = buildWorld(setup, setup.schemes[0] as (typeof setup.schemes)[number]);
    const renderer = new LayerRenderer(gl, { maxSamples: 1, coarseFirst: false });
    const most = Number.POSITIVE_INFINITY;
    return { world, renderer, triangles: world.stage.tree.corners.length / 9, sampleMs: most, lightMs: most };
  });
  // shaders compiled and stages uploaded before anything is timed
  for (const scene of scenes) trace(scene, 0, 0);
  for (let round = 1; round <= rounds; round++)
    for (const scene of scenes) {
      scene.sampleMs = Math.min(scene.sampleMs, trace(scene, round, 0));
      scene.lightMs = Math.min(scene.lightMs, trace(scene, round, 0.01 * round));
    }
  for (const { renderer } of scenes) renderer.dispose();
  return scenes.map(({ triangles, sampleMs, lightMs }) => ({ triangles, sampleMs, lightMs }));
};
