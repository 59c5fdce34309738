import type { RayTimes } from '../page/rays.ts';
import { type Posted, resultsOf } from '../page-runs.ts';
import type { Row } from '../table.ts';
import { digits, listed, type Sized, sizeOf, time } from './words.ts';

/** Goal of the renderer over the bare walk. */
const mostOverBare = 1.25;

const caseNames = { torch: 'torches on stands', panel: 'panels on stands', walked: 'torches walked' } as const;

/** A row for each kind of lamp and number of triangles. */
export const rayRows = (posted: readonly Posted[]): Row[] => {
  const all = resultsOf<Sized<RayTimes>>(posted, 'rays');
  const nameOf = ({ kind, triangles }: RayTimes) => `${kind} ${triangles}`;
  return [...new Set(all.map(nameOf))].map((name) => {
    const runs = all.filter((run) => nameOf(run) === name);
    const [first] = runs as [Sized<RayTimes>];
    const { kind, triangles } = first;
    const ratios = (part: 'all' | 'hits' | 'light') => listed(runs, (run) => run[part].ratio.toFixed(2));
    return {
      what: `a sample, ${listed(runs, ({ passes }) => `${passes}`)} ${caseNames[kind]}, matt ground of ${triangles.toLocaleString('en')} triangles, ${sizeOf(first)}`,
      measured: `${listed(runs, ({ all: { oursMs } }) => time(oursMs))}; ${listed(runs, ({ raysPerSecond }) => digits(raysPerSecond / 1e6))} million rays/s`,
      ratio: `${ratios('all')} × the bare walk (first hits ${ratios('hits')}, light ${ratios('light')})`,
      goal: `at most ${mostOverBare} ×`,
      // below 0 where the noise of a small picture is more than the walk: nothing is shown then
      isMet: runs.every(({ all: { ratio } }) => ratio > 0 && ratio <= mostOverBare),
    };
  });
};
