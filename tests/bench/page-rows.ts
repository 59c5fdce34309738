import type { ReadingTimes } from './page/readings.ts';
import type { RemixTimes } from './page/remix.ts';
import { type Posted, resultsOf } from './page-runs.ts';
import { convergenceRows } from './rows/convergence.ts';
import { growthRows } from './rows/growth.ts';
import { rayRows } from './rows/rays.ts';
import { listed, type Sized, sizeOf, time } from './rows/words.ts';
import type { Row } from './table.ts';

const mostRemix = 1 / 20;
const mostMoved = 1.5;

const remixRows = (posted: readonly Posted[]): Row[] =>
  resultsOf<Sized<RemixTimes>>(posted, 'remix').flatMap((run): Row[] => {
    const kinds = [run.levelMs, run.gelMs, run.secondsMs, run.isoMs];
    const of = (ms: number) => ms / run.oneLampMs;
    return [
      {
        what: `level · gel · seconds · ISO of one of ${run.lamps} lamps changed, ${sizeOf(run)}`,
        measured: `${listed(kinds, time)}; a sample of one lamp ${time(run.oneLampMs)}`,
        ratio: listed(kinds, (ms) => of(ms).toFixed(3)),
        goal: 'at most 0.05 of a sample',
        isMet: kinds.every((ms) => of(ms) <= mostRemix),
      },
      {
        what: `one of ${run.lamps} lamps moved, to the first full picture, ${sizeOf(run)}`,
        measured: `${time(run.movedMs)}; a sample of all ${run.lamps} ${time(run.allLampsMs)}`,
        ratio: `${of(run.movedMs).toFixed(2)} × a sample of one lamp`,
        goal: `at most ${mostMoved} ×`,
        isMet: of(run.movedMs) <= mostMoved,
      },
    ];
  });

const readingRows = (posted: readonly Posted[]): Row[] => {
  const runs = resultsOf<ReadingTimes>(posted, 'readings');
  if (runs.length === 0) return [];
  return [
    {
      what: `all readings and cautions of a scheme, its lamps moved (${listed(runs, ({ setup }) => setup)})`,
      measured: listed(runs, ({ movedMs, schemes }) => time(movedMs / schemes)),
      ratio: '',
      goal: '',
      isMet: null,
    },
  ];
};

/** The table’s rows from what pages posted. */
export const pageRows = (posted: readonly Posted[]): Row[] => [
  ...rayRows(posted),
  ...growthRows(posted),
  ...convergenceRows(posted),
  ...remixRows(posted),
  ...readingRows(posted),
];
