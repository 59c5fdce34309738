import type { WebGLRenderer, WebGLRenderTarget } from 'three';
import { LayerRenderer } from '../../../app/web/render/layer-renderer.ts';
import type { Size } from '../../../app/web/render/layer-store.ts';
import { floatTarget, recordTarget } from '../../../app/web/render/targets.ts';
import { Tracer } from '../../../app/web/render/tracer.ts';
import { BareKernel } from './bare-kernel.ts';
import { litPebbles, type RayCase, sceneOf } from './lit-pebbles.ts';
import { checkHits, checkLight, countOf } from './same-rays.ts';
import { finish, median, timed } from './timing.ts';

/** Milliseconds of the renderer and of the bare walk, medians; and the median of the rounds’ own ratios. */
export interface Against {
  readonly oursMs: number;
  readonly bareMs: number;
  readonly ratio: number;
}

/** One sample of all passes; renderer and bare walk take turns within a round. */
export interface RayTimes {
  readonly kind: RayCase;
  readonly triangles: number;
  readonly passes: number;
  readonly all: Against;
  /** The same apart: first hits, and the light of the first pass over them. */
  readonly hits: Against;
  readonly light: Against;
  /** Fetching the shadow rays of all passes, which is taken off the bare walk. */
  readonly fetchMs: number;
  readonly samplesPerSecond: number;
  /** First hits and shadow rays that the renderer traces in a sample. */
  readonly raysPerSample: number;
  readonly raysPerSecond: number;
}

/** The sample at which both are compared texel by texel: jitter and lamps’ moments are past their middles. */
const comparedSample = 5;

/**
 * @param rounds how often both are timed
 * @param batch samples timed together, so that waiting for the card counts little
 */
export const benchRays = (
  gl: WebGLRenderer,
  kind: RayCase,
  triangles: number,
  passes: number,
  size: Size,
  rounds: number,
  batch: number,
): RayTimes => {
  const scene = sceneOf(litPebbles(triangles, kind, passes));
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
  const [nothing, light] = [0, 1].map(() => floatTarget(gl, size.width, size.height)) as [
    WebGLRenderTarget,
    WebGLRenderTarget,
  ];
  const whole = { from: 0, to: size.height };
  const traceHits = (sample: number) => tracer.traceFirstHits(view, sample, hits, whole);
  const traceLight = (pass: number, sample: number): WebGLRenderTarget => {
    const source = sources[pass] as (typeof sources)[number];
    tracer.traceLight({ view, source, bounces: 0 }, sample, hits, nothing, light, whole);
    return light;
  };
  const writeRays = (sample: number, into: readonly WebGLRenderTarget[]) => {
    traceHits(sample);
    return sources.map((source, i) => bare.raysToLight(view, stage, source, sample, hits, into[i]));
  };
  const shadowRays = writeRays(comparedSample, []);
  bare.walkFromCamera(view, comparedSample);
  checkHits(gl, bare, hits);
  shadowRays.forEach((rays, pass) => {
    checkLight(gl, bare, rays, traceLight(pass, comparedSample));
  });

  let samples = 1;
  const traceAll = () => {
    samples++;
    renderer.runTo(samples);
    return layers.at(-1)?.full ?? null;
  };
  const over = (work: (rays: WebGLRenderTarget) => WebGLRenderTarget) => () =>
    shadowRays.reduce<WebGLRenderTarget | null>((_, rays) => work(rays), null);
  const walkLight = over((rays) => bare.walkToLight(rays));
  const fetchLight = over((rays) => bare.fetch(rays));
  const [first] = shadowRays as [WebGLRenderTarget];
  const each = (work: () => WebGLRenderTarget | null): number =>
    timed(gl, () => {
      let target: WebGLRenderTarget | null = null;
      for (let i = 0; i < batch; i++) target = work();
      return target;
    }) / batch;
  // a record of whole numbers is waited for by way of what is drawn after it
  const waitFor = () => bare.fetch(first);
  renderer.runTo(samples);
  finish(gl, traceAll());
  finish(gl, walkLight());
  finish(gl, fetchLight());

  const found = { all: [], hits: [], light: [] } as Record<'all' | 'hits' | 'light', [number, number][]>;
  const [fetches, counts]: [number[], number[]] = [[], []];
  for (let round = 0; round < rounds; round++) {
    writeRays(samples, shadowRays);
    counts.push(shadowRays.reduce((sum, rays) => sum + countOf(gl, rays), size.width * size.height));
    const sample = samples;
    const fetchMs = each(fetchLight);
    const oneFetchMs = each(waitFor);
    const bareHitsMs = each(() => bare.walkFromCamera(view, sample));
    fetches.push(fetchMs);
    found.all.push([each(traceAll), bareHitsMs + each(walkLight) - fetchMs]);
    const hitsMs = each(() => {
      traceHits(sample);
      return waitFor();
    });
    found.hits.push([hitsMs - oneFetchMs, bareHitsMs]);
    found.light.push([each(() => traceLight(0, sample)), each(() => bare.walkToLight(first)) - oneFetchMs]);
  }
  for (const thing of [renderer, bare, tracer, hits, nothing, light, ...shadowRays]) thing.dispose();
  const against = (times: readonly (readonly [number, number])[]): Against => ({
    oursMs: median(times.map(([ours]) => ours)),
    bareMs: median(times.map(([, theirs]) => theirs)),
    ratio: median(times.map(([ours, theirs]) => ours / theirs)),
  });
  const all = against(found.all);
  const raysPerSample = Math.round(median(counts));
  return {
    kind,
    triangles: scene.triangles,
    passes,
    all,
    hits: against(found.hits),
    light: against(found.light),
    fetchMs: median(fetches),
    samplesPerSecond: 1000 / all.oursMs,
    raysPerSample,
    raysPerSecond: (1000 * raysPerSample) / all.oursMs,
  };
};
