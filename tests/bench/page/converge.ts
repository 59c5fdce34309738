import type { WebGLRenderer, WebGLRenderTarget } from 'three';
import { LayerRenderer } from '../../../app/web/render/layer-renderer.ts';
import type { Size } from '../../../app/web/render/layer-store.ts';
import { type LampKind, type LitScene, litPebbles, sceneOf } from './lit-pebbles.ts';
import type { OtherTracer } from './other-tracer.ts';
import { finish } from './timing.ts';

const wantedError = 0.02;

/** One tracer on its way to its own reference. */
export interface Road {
  /** Root of the mean square error over the reference’s mean, by samples. */
  readonly errors: readonly (readonly [samples: number, error: number])[];
  readonly sampleMs: number;
  /** Samples to 2 %. */
  readonly samples: number;
  /** Whether the last looks were carried on to 2 % by the law that they follow. */
  readonly isExtrapolated: boolean;
  readonly milliseconds: number;
  readonly referenceMean: number;
}

export interface Convergence {
  readonly kind: LampKind;
  readonly lamps: number;
  readonly triangles: number;
  readonly referenceSamples: number;
  readonly ours: Road;
  readonly theirs: Road;
  /** Our time over theirs, and the means of the two references over each other: they show the same scene. */
  readonly timesFaster: number;
  readonly meanRatio: number;
}

/** Something that goes on to so many samples; the picture is in the red channel. */
interface Runner {
  readonly runTo: (samples: number) => void;
  readonly read: () => Float32Array;
  readonly wait: () => void;
}

/** 1, 2, 3, 4, 6, 8, 12 … up to a quarter of the reference, so that what both have in common counts little. */
const looksTo = (referenceSamples: number): number[] => {
  const looks = [1, 2, 3];
  for (let n = 4; n <= referenceSamples / 4; n *= 2)
    looks.push(n, ...(1.5 * n <= referenceSamples / 4 ? [1.5 * n] : []));
  return looks;
};

const mean = (picture: Float32Array): number => picture.reduce((sum, v) => sum + v, 0) / picture.length;

const rmsError = (picture: Float32Array, reference: Float32Array): number => {
  const square = reference.reduce((sum, v, i) => sum + ((picture[i] as number) - v) ** 2, 0);
  return Math.sqrt(square / reference.length) / mean(reference);
};

/** Where a line through the points, drawn in logarithms, comes to 2 %. */
const crossing = ([n1, e1]: readonly [number, number], [n2, e2]: readonly [number, number]): number =>
  n1 * (n2 / n1) ** (Math.log(e1 / wantedError) / Math.log(e1 / e2));

/** Samples to 2 %: between the looks on either side of it, else by the slope over the last four looks, at least by half. */
const samplesTo = (errors: Road['errors']): { samples: number; isExtrapolated: boolean } => {
  const settled = errors.findIndex((_, i) => errors.slice(i).every(([, error]) => error <= wantedError));
  const after = errors[settled];
  const before = errors[settled - 1];
  if (after) return { samples: before ? crossing(before, after) : after[0], isExtrapolated: false };
  const [first, last] = [errors.at(-4), errors.at(-1)];
  if (!first || !last) throw new Error('too few looks');
  const slope = Math.max(Math.log(first[1] / last[1]) / Math.log(last[0] / first[0]), 0.5);
  return { samples: last[0] * (last[1] / wantedError) ** (1 / slope), isExtrapolated: true };
};

const go = ({ runTo, read, wait }: Runner, referenceSamples: number): Road => {
  const looks = looksTo(referenceSamples);
  const pictures = looks.map((samples) => {
    runTo(samples);
    return read();
  });
  const last = looks.at(-1) as number;
  wait();
  const start = performance.now();
  // in parts, so that the card’s queue stays short
  for (let samples = last + 16; samples < referenceSamples; samples += 16) {
    runTo(samples);
    wait();
  }
  runTo(referenceSamples);
  wait();
  const sampleMs = (performance.now() - start) / (referenceSamples - last);
  const reference = read();
  const errors = looks.map((samples, i) => [samples, rmsError(pictures[i] as Float32Array, reference)] as const);
  const found = samplesTo(errors);
  return { errors, sampleMs, ...found, milliseconds: found.samples * sampleMs, referenceMean: mean(reference) };
};

const redOf = (gl: WebGLRenderer, target: WebGLRenderTarget): Float32Array => {
  const { width, height } = target;
  const rgba = new Float32Array(width * height * 4);
  gl.readRenderTargetPixels(target, 0, 0, width, height, rgba);
  return Float32Array.from({ length: width * height }, (_, i) => rgba[4 * i] as number);
};

/** All lamps together at one lumen each, as the sum of their layers. */
const ourRunner = (gl: WebGLRenderer, { world, frame, lights }: LitScene, size: Size, most: number) => {
  const renderer = new LayerRenderer(gl, { maxSamples: most, coarseFirst: false });
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

/** Both tracers over the same pebbles, lamps and camera, each against its own reference. */
export const benchConvergence = async (
  gl: WebGLRenderer,
  other: OtherTracer,
  triangles: number,
  kind: LampKind,
  lamps: number,
  size: Size,
  referenceSamples: number,
): Promise<Convergence> => {
  const scene = sceneOf(litPebbles(triangles, kind, lamps));
  const mine = ourRunner(gl, scene, size, referenceSamples);
  const ours = go(mine.runner, referenceSamples);
  mine.dispose();
  await other.show(scene, size);
  let target: WebGLRenderTarget | null = null;
  const theirs = go(
    {
      runTo: (samples) => {
        target = other.runTo(samples);
      },
      read: () => redOf(gl, target as WebGLRenderTarget),
      wait: () => finish(gl, target),
    },
    referenceSamples,
  );
  return {
    kind,
    lamps,
    triangles: scene.triangles,
    referenceSamples,
    ours,
    theirs,
    timesFaster: theirs.milliseconds / ours.milliseconds,
    meanRatio: ours.referenceMean / theirs.referenceMean,
  };
};
