import type { WebGLRenderer, WebGLRenderTarget } from 'three';
import { LayerRenderer } from '../../../app/web/render/layer-renderer.ts';
import type { Size } from '../../../app/web/render/layer-store.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { litPebbles, sceneOf } from './lit-pebbles.ts';
import { median, timed } from './timing.ts';

/** One sample of all passes at each of several sizes of one thing; medians, all sizes taking turns. */
export interface Curve {
  readonly of: 'triangles' | 'passes' | 'pixels' | 'waypoints' | 'bounces';
  readonly points: readonly (readonly [size: number, sampleMs: number])[];
}

interface Point {
  readonly at: number;
  readonly setup: Setup;
  readonly size: Size;
  readonly bounces?: 1 | 2;
}

/** The first lamp on its way along a line of so many waypoints. */
const onItsWay = (setup: Setup, waypoints: number): Setup => ({
  ...setup,
  schemes: setup.schemes.map((scheme) => ({
    ...scheme,
    frames: scheme.frames.map((frame) => ({
      ...frame,
      passes: frame.passes.map((pass) => {
        const [first] = pass.waypoints;
        if (!first) return pass;
        const [east, north, up] = first.position;
        return {
          ...pass,
          waypoints: Array.from({ length: waypoints }, (_, i) => {
            const share = waypoints > 1 ? i / (waypoints - 1) : 0;
            return { ...first, time: 5 * share, position: [east, north - 3 * share, up] as [number, number, number] };
          }),
        };
      }),
    })),
  })),
});

const curve = (gl: WebGLRenderer, of: Curve['of'], points: readonly Point[], rounds: number): Curve => {
  const runs = points.map(({ at, setup, size, bounces = 0 as 0 | 1 | 2 }) => {
    const { world, frame, lights } = sceneOf(setup);
    const renderer = new LayerRenderer(gl, { maxSamples: 1e6, coarseFirst: false });
    const wanted = lights.map(({ id, source }) => ({ label: id, view: frame.view, source, bounces }));
    const layers = renderer.want(world.stage, wanted, size);
    const trace = (): WebGLRenderTarget | null => {
      renderer.runTo((layers[0]?.samples ?? 0) + 1);
      return layers.at(-1)?.full ?? null;
    };
    timed(gl, trace);
    return { at, renderer, trace, times: [] as number[] };
  });
  for (let round = 0; round < rounds; round++) for (const run of runs) run.times.push(timed(gl, run.trace));
  for (const { renderer } of runs) renderer.dispose();
  return { of, points: runs.map(({ at, times }) => [at, median(times)] as const) };
};

/** How a sample grows with each thing alone. */
export function* benchCurves(gl: WebGLRenderer, size: Size, rounds: number): Iterable<Curve> {
  const pebbles = (triangles: number, passes: number) => litPebbles(triangles, 'torch', passes);
  yield curve(
    gl,
    'triangles',
    [3000, 10_000, 30_000, 100_000, 300_000].map((at) => ({ at, setup: pebbles(at, 1), size })),
    rounds,
  );
  const plain = pebbles(30_000, 1);
  yield curve(
    gl,
    'passes',
    [1, 2, 4, 8, 16].map((at) => ({ at, setup: pebbles(30_000, at), size })),
    rounds,
  );
  yield curve(
    gl,
    'pixels',
    [1, 2, 4, 8].map((parts) => {
      const smaller = { width: Math.round(size.width / parts), height: Math.round(size.height / parts) };
      return { at: smaller.width * smaller.height, setup: plain, size: smaller };
    }),
    rounds,
  );
  yield curve(
    gl,
    'waypoints',
    [1, 2, 16, 64, 256].map((at) => ({ at, setup: onItsWay(plain, at), size })),
    rounds,
  );
  yield curve(
    gl,
    'bounces',
    [{ at: 0, setup: plain, size }, ...([1, 2] as const).map((at) => ({ at, setup: plain, size, bounces: at }))],
    rounds,
  );
}
