import { readFileSync } from 'node:fs';
import { parseSetup } from '../../core/setup/parse-setup.ts';
import type { Setup } from '../../core/setup/schema/setup.ts';
import { traceLayers } from '../../core/trace/layer.ts';
import { buildWorld, type Source } from '../../core/world/world.ts';

/** Error of a layer against a reference: root of the mean square, over the reference's mean. */
const rmsError = (layer: Float64Array, reference: Float64Array): number => {
  let [square, sum] = [0, 0];
  reference.forEach((v, i) => {
    square += ((layer[i] as number) - v) ** 2;
    sum += v;
  });
  return Math.sqrt(square / reference.length) / (sum / reference.length);
};

const size = { width: 64, height: 36 };
const referenceSamples = 4096;
const tried = [1, 2, 3, 4, 6, 8, 12, 16, 24, 32, 48, 64, 96, 128, 192, 256, 384, 512];
const wantedError = 0.02;

export interface Convergence {
  readonly name: string;
  /** Samples to `wantedError` against the reference; null when the most tried do not do. */
  readonly samples: number | null;
  /** Error of the first pictures, by samples. */
  readonly errors: readonly (readonly [samples: number, error: number])[];
}

/** Samples that a source's layer takes until it is 2 % from its own reference. */
const converge = (name: string, setup: Setup, source: Source): Convergence => {
  const { stage, view } = buildWorld(setup, setup.schemes[0] as Setup['schemes'][number]);
  const trace = (samples: number) => traceLayers(stage, view, [source], { ...size, samples })[0] as Float64Array;
  const reference = trace(referenceSamples);
  const errors: (readonly [number, number])[] = [];
  for (const samples of tried) {
    const error = rmsError(trace(samples), reference);
    errors.push([samples, error]);
    if (error <= wantedError) return { name, samples, errors };
  }
  return { name, samples: null, errors };
};

/** The key of the wall sample on a stand, walked along the wall, and swept along it from where it stands: 16 waypoints. */
export const movingPassTimes = (): Convergence[] => {
  const setup = parseSetup(readFileSync('assets/setups/drystone-wall.json', 'utf8'));
  const scheme = setup.schemes.at(-1) as Setup['schemes'][number];
  const { source } = buildWorld(setup, scheme)
    .frames.flatMap(({ lights }) => lights)
    .find((light) => light.source.kind === 'lamp') as { source: Extract<Source, { kind: 'lamp' }> };
  const still = { ...source, holder: null };
  const [first] = source.path as [(typeof source.path)[number]];
  const along = Array.from({ length: 16 }, (_, i) => i / 15);
  const by = (share: number) => [(share - 0.5) * 7, 0, -(share - 0.5) * 5] as const;
  const moved = (p: readonly number[], share: number) => p.map((v, axis) => v + (by(share)[axis] as number));
  type Place = readonly [number, number, number];
  const walk = along.map((share) => ({
    seconds: share,
    position: moved(first.position, share) as unknown as Place,
    aim: moved(first.aim, share) as unknown as Place,
  }));
  const sweep = along.map((share) => ({
    seconds: share,
    position: first.position,
    aim: moved(first.aim, share) as unknown as Place,
  }));
  return [
    converge('standing', setup, still),
    converge('walked along the wall', setup, { ...still, path: walk }),
    converge('swept along the wall', setup, { ...still, path: sweep }),
  ];
};

export const movingPassLines = (found: readonly Convergence[]): string => {
  const [still] = found;
  return [
    `Samples to ${wantedError * 100} % RMS against ${referenceSamples}, ${size.width} x ${size.height}, 16 waypoints (bar: at most 2 x standing)`,
    ...found.map(({ name, samples, errors }) => {
      const ratio = samples && still?.samples ? ` = ${(samples / still.samples).toFixed(2)} x` : '';
      const last = errors.at(-1);
      return `  ${name.padEnd(24)} ${samples ?? `more than ${last?.[0]}`}${ratio} (first sample ${(100 * (errors[0]?.[1] ?? 0)).toFixed(1)} %)`;
    }),
  ].join('\n');
};
