/** One tracer on its way to its own reference. */
export interface Road {
  /** Root of the mean square error over the reference’s mean, by samples. */
  readonly errors: readonly (readonly [samples: number, error: number])[];
  readonly sampleMs: number;
  /** Samples to 2 %. */
  readonly samples: number;
  /** Whether the last looks were carried on to 2 % by the law that they follow: no look came so far in the time given. */
  readonly isExtrapolated: boolean;
  readonly milliseconds: number;
  readonly referenceSamples: number;
  readonly referenceMean: number;
}

/** Something that goes on to so many samples; the picture is one number a texel. */
export interface Runner {
  readonly runTo: (samples: number) => void;
  readonly read: () => Float32Array;
  readonly wait: () => void;
}

const wantedError = 0.02;
/** A look is at most this share of the reference. */
const lookShare = 1 / 4;

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

interface Look {
  readonly samples: number;
  readonly picture: Float32Array;
}

/**
 * Looks at 1, 2, 3, 4, 6, 8, 12 … samples until one is well within 2 %, or the time is up. How far a look is off nobody knows
 * yet; of independent samples it is by as much, in the mean, as it differs from the look at half as many.
 */
const looksOf = ({ runTo, read, wait }: Runner, seconds: number): readonly Look[] => {
  const looks: Look[] = [];
  const start = performance.now();
  const lookAt = (samples: number): Float32Array => {
    // in parts, so that the card’s queue stays short
    for (let n = (looks.at(-1)?.samples ?? 0) + 16; n < samples; n += 16) {
      runTo(n);
      wait();
    }
    runTo(samples);
    const picture = read();
    looks.push({ samples, picture });
    return picture;
  };
  for (const samples of [1, 2, 3]) lookAt(samples);
  for (let n = 4; ; n *= 2) {
    const picture = lookAt(n);
    const half = looks.find(({ samples }) => samples === n / 2)?.picture;
    const isNear = n >= 32 && half !== undefined && rmsError(half, picture) <= 0.8 * wantedError;
    if (isNear || (n >= 16 && performance.now() - start > 1000 * seconds)) return looks;
    lookAt(1.5 * n);
  }
};

/** Goes the road, in about so many seconds; only the way from the last look to the reference is timed. */
export const goRoad = (runner: Runner, seconds: number): Road => {
  const looks = looksOf(runner, lookShare * seconds);
  const { samples: last } = looks.at(-1) as Look;
  const referenceSamples = last / lookShare;
  runner.wait();
  const start = performance.now();
  for (let samples = last + 16; samples < referenceSamples; samples += 16) {
    runner.runTo(samples);
    runner.wait();
  }
  runner.runTo(referenceSamples);
  runner.wait();
  const sampleMs = (performance.now() - start) / (referenceSamples - last);
  const reference = runner.read();
  // the reference goes on from the looks: of independent samples what both have in common hides this much
  const hidden = (samples: number) => Math.sqrt(1 - samples / referenceSamples);
  const errors = looks.map(
    ({ samples, picture }) => [samples, rmsError(picture, reference) / hidden(samples)] as const,
  );
  const found = samplesTo(errors);
  const milliseconds = found.samples * sampleMs;
  return { errors, sampleMs, ...found, milliseconds, referenceSamples, referenceMean: mean(reference) };
};
