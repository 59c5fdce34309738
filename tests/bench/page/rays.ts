import type { WebGLRenderer, WebGLRenderTarget } from 'three';
import { LayerRenderer } from '../../../app/web/render/layer-renderer.ts';
import type { Size } from '../../../app/web/render/layer-store.ts';
import { recordTarget } from '../../../app/web/render/targets.ts';
import { Tracer } from '../../../app/web/render/tracer.ts';
import { BareKernel } from './bare-kernel.ts';
import { litPebbles, sceneOf } from './lit-pebbles.ts';
import { finish, median, timed } from './timing.ts';

/** Times in milliseconds of one sample of all passes, medians over rounds in which renderer and bare walk take turns. */
export interface RayTimes {
  readonly triangles: number;
  readonly passes: number;
  readonly sampleMs: number;
  readonly bareMs: number;
  /** Median of the rounds’ own ratios. */
  readonly ratio: number;
  readonly samplesPerSecond: number;
  /** First hits and shadow rays that the renderer traces in a sample. */
  readonly raysPerSample: number;
  readonly raysPerSecond: number;
  /** The same apart: first hits, and the light of one pass in the mean; the renderer, the bare walk. */
  readonly hits: readonly [number, number];
  readonly light: readonly [number, number];
}

/**
 * @param rounds how often both are timed
 * @param batch samples timed together, so that waiting for the card counts little
 */
export const benchRays = (
  gl: WebGLRenderer,
  triangles: number,
  passes: number,
  size: Size,
  rounds: number,
  batch: number,
): RayTimes => {
  const scene = sceneOf(litPebbles(triangles, 'torch', passes));
  const { view } = scene.frame;
  const { stage } = scene.world;
  const sources = scene.lights.map(({ source }) => source);
  const renderer = new LayerRenderer(gl, { maxSamples: 1e6, coarseFirst: false });
  const layers = renderer.want(
    stage,
    sources.map((source, i) => ({ label: `p${i}`, view, source, bounces: 0 as const })),
    size,
  );
  const bare = new BareKernel(gl, stage, size);
  const tracer = new Tracer(gl);
  tracer.setStage(stage);
  const hits = recordTarget(size.width, size.height);
  const whole = { from: 0, to: size.height };
  const cameraRays = bare.raysOfCamera(view, 0);
  const shadowRays = sources.map((source) => {
    tracer.traceFirstHits(view, 0, hits, whole);
    return bare.raysToLight(view, stage, source, 0, hits);
  });
  const toSample = (sample: number) => {
    tracer.traceFirstHits(view, sample, hits, whole);
    bare.raysOfCamera(view, sample, cameraRays);
    sources.forEach((source, i) => {
      bare.raysToLight(view, stage, source, sample, hits, shadowRays[i]);
    });
    finish(gl, shadowRays[0] ?? null);
  };
  let samples = 1;
  const lastLayer = (): WebGLRenderTarget | null => layers.at(-1)?.full ?? null;
  const trace = (count: number) => () => {
    samples += count;
    renderer.runTo(samples);
    return lastLayer();
  };
  const repeat = (count: number, work: () => WebGLRenderTarget | null) => () => {
    let target: WebGLRenderTarget | null = null;
    for (let i = 0; i < count; i++) target = work();
    return target;
  };
  const walkAll = () => {
    bare.walk(cameraRays, 'closest');
    let target: WebGLRenderTarget | null = null;
    for (const rays of shadowRays) target = bare.walk(rays, 'any');
    return target;
  };
  renderer.runTo(1);
  finish(gl, lastLayer());
  checkSame(gl, bare, shadowRays[0] as WebGLRenderTarget, layers[0]?.full as WebGLRenderTarget);
  trace(1)();
  timed(gl, walkAll);
  const [ours, theirs, counts]: [number[], number[], number[]] = [[], [], []];
  const apart = { hits: [[], []] as [number[], number[]], light: [[], []] as [number[], number[]] };
  const [first] = shadowRays;
  const firstSource = sources[0] as (typeof sources)[number];
  const light = [0, 1].map(() => layers[0]?.full?.clone() as WebGLRenderTarget);
  for (let round = 0; round < rounds; round++) {
    toSample(samples);
    counts.push(shadowRays.reduce((sum, rays) => sum + bare.countOf(rays), size.width * size.height));
    const sample = samples;
    ours.push(timed(gl, trace(batch)) / batch);
    theirs.push(timed(gl, repeat(batch, walkAll)) / batch);
    const traceHits = () => {
      tracer.traceFirstHits(view, sample, hits, whole);
      return null;
    };
    const traceLight = () => {
      const task = { view, source: firstSource, bounces: 0 as const };
      tracer.traceLight(task, sample, hits, light[0] as WebGLRenderTarget, light[1] as WebGLRenderTarget, whole);
      return light[1] as WebGLRenderTarget;
    };
    // a record of whole numbers is waited for by way of what is drawn after it
    const wait = () => bare.walk(cameraRays, 'any');
    const waitMs = timed(gl, wait);
    const hitsMs = timed(gl, () => {
      for (let i = 0; i < batch; i++) traceHits();
      return wait();
    });
    apart.hits[0].push((hitsMs - waitMs) / batch);
    apart.hits[1].push(
      timed(
        gl,
        repeat(batch, () => bare.walk(cameraRays, 'closest')),
      ) / batch,
    );
    apart.light[0].push(timed(gl, repeat(batch, traceLight)) / batch);
    apart.light[1].push(
      timed(
        gl,
        repeat(batch, () => bare.walk(first as WebGLRenderTarget, 'any')),
      ) / batch,
    );
  }
  const sampleMs = median(ours);
  const raysPerSample = Math.round(median(counts));
  for (const thing of [renderer, bare, tracer, hits, cameraRays, ...shadowRays, ...light]) thing.dispose();
  return {
    triangles: scene.triangles,
    passes,
    sampleMs,
    bareMs: median(theirs),
    ratio: median(ours.map((ms, i) => ms / (theirs[i] as number))),
    samplesPerSecond: 1000 / sampleMs,
    raysPerSample,
    raysPerSecond: (1000 * raysPerSample) / sampleMs,
    hits: [median(apart.hits[0]), median(apart.hits[1])],
    light: [median(apart.light[0]), median(apart.light[1])],
  };
};

/** The bare walk must find lit just what the renderer lights, or the two don’t trace the same rays. */
const checkSame = (gl: WebGLRenderer, bare: BareKernel, rays: WebGLRenderTarget, layer: WebGLRenderTarget): void => {
  const traced = bare.countOf(rays);
  bare.walk(rays, 'any');
  const free = traced - bare.countMet();
  const { width, height } = layer;
  const values = new Float32Array(width * height * 4);
  gl.readRenderTargetPixels(layer, 0, 0, width, height, values);
  let lit = 0;
  for (let i = 0; i < values.length; i += 4) if ((values[i] as number) > 0) lit++;
  if (traced === 0 || Math.abs(free - lit) > 1e-4 * traced)
    throw new Error(`the bare walk leaves ${free} rays free, the renderer lights ${lit} texels`);
};
