import type { Convergence } from '../page/converge.ts';
import type { Road } from '../page/road.ts';
import { type Posted, resultsOf } from '../page-runs.ts';
import type { Row } from '../table.ts';
import { digits, listed, type Sized, sizeOf, time } from './words.ts';

/** Goals of our time to 2 % over the other tracer's, by lamps. */
const leastFaster: Readonly<Record<number, number>> = { 1: 10, 6: 20 };

const kindNames = { torch: 'small torch', panel: 'soft panel', tube: 'tube' } as const;

/** ≈ marks what was carried on to 2 %. */
const roadText = ({ isExtrapolated, milliseconds, samples }: Road): string =>
  `${isExtrapolated ? '≈ ' : ''}${time(milliseconds)} (${samples.toFixed(0)} samples)`;

/** A row for each kind of lamp. */
export const convergenceRows = (posted: readonly Posted[]): Row[] => {
  const all = resultsOf<Sized<Convergence>>(posted, 'converge');
  return [...new Set(all.map(({ kind }) => kind))].map((kind) => {
    const runs = all.filter((run) => run.kind === kind);
    const [first] = runs as [Sized<Convergence>];
    const isNear = runs.some(({ ours, theirs }) => ours.isExtrapolated || theirs.isExtrapolated);
    return {
      what: `2 % RMS, ${kindNames[kind]}, ${listed(runs, ({ lamps }) => `${lamps}`)} lamps, ${sizeOf(first)}, against three-gpu-pathtracer`,
      measured: listed(
        runs,
        ({ ours, theirs, meanRatio }) => `${roadText(ours)} to ${roadText(theirs)}; means ${meanRatio.toFixed(3)}`,
      ),
      ratio: `${isNear ? '≈ ' : ''}${listed(runs, ({ timesFaster }) => digits(timesFaster))} × less time`,
      goal: `${listed(runs, ({ lamps }) => `${leastFaster[lamps] ?? '–'}`)} ×`,
      isMet: runs.every(({ lamps, timesFaster }) => timesFaster >= (leastFaster[lamps] ?? 0)),
    };
  });
};
