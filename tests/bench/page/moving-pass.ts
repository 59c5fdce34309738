import type { WebGLRenderer } from 'three';
import { LayerRenderer } from '../../../app/web/render/layer-renderer.ts';
import type { Vec3 } from '../../../core/geometry/vec.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { buildWorld, type Source, type World } from '../../../core/world/world.ts';

const referenceSamples = 4096;
const looks = [1, 2, 3, 4, 6, 8, 12, 16, 24, 32, 48, 64, 80, 96, 112, 128, 160, 192, 224, 256, 320, 384, 448, 512];
const wantedError = 0.02;
const waypoints = 16;

/** How quickly a pass comes to rest. */
export interface Convergence {
  readonly name: string;
  /** Samples until the error is 2 % and stays so; null when 512 don't do. */
  readonly samples: number | null;
  /** Root of the mean square error over the reference's mean, by samples. */
  readonly errors: readonly (readonly [samples: number, error: number])[];
  /** Milliseconds a sample, first hits shared with nobody. */
  readonly sampleMs: number;
}

type LampSource = Extract<Source, { kind: 'lamp' }>;

const rmsError = (layer: Float32Array, reference: Float32Array): number => {
  let [square, sum] = [0, 0];
  reference.forEach((v, i) => {
    // the fourth number is no light
    if (i % 4 === 3) return;
    square += ((layer[i] as number) - v) ** 2;
    sum += v;
  });
  return Math.sqrt((square / reference.length) * (4 / 3)) / ((sum / reference.length) * (4 / 3));
};

const converge = (
  gl: WebGLRenderer,
  { stage, view }: World,
  name: string,
  source: LampSource,
  size: { width: number; height: number },
): Convergence => {
  const renderer = new LayerRenderer(gl, { maxSamples: referenceSamples, coarseFirst: false });
  const [layer] = renderer.want(stage, [{ label: name, view, source, bounces: 0 }], size);
  const read = (samples: number): Float32Array => {
    renderer.runTo(samples);
    const rgba = new Float32Array(size.width * size.height * 4);
    if (layer?.full) gl.readRenderTargetPixels(layer.full, 0, 0, size.width, size.height, rgba);
    return rgba;
  };
  const pictures = looks.map((samples) => [samples, read(samples)] as const);
  const start = performance.now();
  const reference = read(referenceSamples);
  const sampleMs = (performance.now() - start) / (referenceSamples - (looks.at(-1) as number));
  renderer.dispose();
  const errors = pictures.map(([samples, picture]) => [samples, rmsError(picture, reference)] as const);
  const settled = errors.findIndex((_, i) => errors.slice(i).every(([, error]) => error <= wantedError));
  return { name, samples: errors[settled]?.[0] ?? null, errors, sampleMs };
};

/**
 * The key of a setup's scheme on a stand, walked aside past what it lights, and swept over it from where it stands,
 * each with 16 waypoints over 7 m by 5 m.
 */
export const benchMovingPass = (
  gl: WebGLRenderer,
  setupText: string,
  schemeId: string,
  size: { width: number; height: number },
): Convergence[] => {
  const setup = parseSetup(setupText);
  const world = buildWorld(setup, setup.schemes.find(({ id }) => id === schemeId) as Setup['schemes'][number]);
  const lights = world.frames.flatMap((frame) => frame.lights);
  const source = lights.map((light) => light.source).find((each) => each.kind === 'lamp');
  if (source?.kind !== 'lamp') throw new Error('no lamp');
  const still: LampSource = { ...source, holder: null };
  const first = still.path[0] as LampSource['path'][number];
  const moved = ([x, y, z]: Vec3, share: number): Vec3 => [x + (share - 0.5) * 7, y, z - (share - 0.5) * 5];
  const shares = Array.from({ length: waypoints }, (_, i) => i / (waypoints - 1));
  const walk = shares.map((seconds) => ({
    seconds,
    position: moved(first.position, seconds),
    aim: moved(first.aim, seconds),
  }));
  const sweep = shares.map((seconds) => ({ seconds, position: first.position, aim: moved(first.aim, seconds) }));
  return [
    converge(gl, world, 'standing', still, size),
    converge(gl, world, 'walked', { ...still, path: walk }, size),
    converge(gl, world, 'swept', { ...still, path: sweep }, size),
  ];
};
