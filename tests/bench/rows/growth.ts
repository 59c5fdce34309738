import type { SampleTimes } from '../page/growth.ts';
import { type Posted, resultsOf } from '../page-runs.ts';
import type { Row } from '../table.ts';
import { listed, type Sized, sizeOf, time } from './words.ts';

/** Issue bars: a sample's time against the one before, ten times the triangles. */
const mostGrowth = [1.8, 2.5];

interface Growing {
  readonly growth: 'finer' | 'closer';
  readonly samples: readonly SampleTimes[];
}

/** What ten times the triangles cost, twice. */
export const growthRows = (posted: readonly Posted[]): Row[] =>
  resultsOf<Sized<Growing>>(posted, 'growth').map((run) => {
    const { growth, samples } = run;
    const times = samples.map(({ sampleMs }) => sampleMs);
    const ratios = times.slice(1).map((ms, i) => ms / (times[i] as number));
    return {
      what: `a sample, ${listed(samples, ({ triangles }) => triangles.toLocaleString('en'))} triangles, ${growth} pebbles, ${sizeOf(run)}`,
      measured: listed(times, time),
      ratio: `${listed(ratios, (ratio) => ratio.toFixed(2))} × the one before`,
      goal: `at most ${listed(mostGrowth, String)} ×`,
      isMet: ratios.every((ratio, i) => ratio <= (mostGrowth[i] as number)),
    };
  });
