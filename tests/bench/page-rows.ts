import type { Size } from '../../app/web/render/layer-store.ts';
import type { Convergence } from './page/converge.ts';
import type { RayTimes } from './page/rays.ts';
import type { ReadingTimes } from './page/readings.ts';
import type { RemixTimes } from './page/remix.ts';
import { type Posted, resultsOf } from './page-runs.ts';
import type { Row } from './table.ts';

type Sized<T> = T & Size;

const digits = (value: number): string =>
  value >= 100 ? value.toFixed(0) : value >= 10 ? value.toFixed(1) : value.toFixed(2);
const time = (ms: number): string => (ms >= 1000 ? `${digits(ms / 1000)} s` : `${digits(ms)} ms`);
const listed = <T>(values: readonly T[], text: (value: T) => string): string => values.map(text).join(' · ');
const sizeOf = ({ width, height }: Size): string => `${width} × ${height}`;

/** Goals of the renderer over the bare walk, and of our time to 2 % over the other tracer’s. */
const mostOverBare = 1.25;
const leastFaster: Readonly<Record<number, number>> = { 1: 10, 6: 20 };
const mostRemix = 1 / 20;
const mostMoved = 1.5;

const rayRows = (posted: readonly Posted[]): Row[] => {
  const all = resultsOf<Sized<RayTimes>>(posted, 'rays');
  return [...new Set(all.map(({ triangles }) => triangles))].map((triangles) => {
    const runs = all.filter((run) => run.triangles === triangles);
    const [first] = runs as [Sized<RayTimes>];
    return {
      what: `a sample, ${triangles.toLocaleString('en')} triangles, ${listed(runs, ({ passes }) => `${passes}`)} lamps, ${sizeOf(first)}`,
      measured: `${listed(runs, ({ sampleMs }) => time(sampleMs))}; ${listed(runs, ({ raysPerSecond }) => digits(raysPerSecond / 1e6))} million rays/s`,
      ratio: `${listed(runs, ({ ratio }) => ratio.toFixed(2))} × the bare walk`,
      goal: `at most ${mostOverBare} ×`,
      isMet: runs.every(({ ratio }) => ratio <= mostOverBare),
    };
  });
};

const kindNames = { torch: 'small torch', panel: 'soft panel', tube: 'tube' } as const;

const convergenceRows = (posted: readonly Posted[]): Row[] => {
  const all = resultsOf<Sized<Convergence>>(posted, 'converge');
  const carried = ({ theirs: { isExtrapolated } }: Convergence) => (isExtrapolated ? '≈ ' : '');
  return [...new Set(all.map(({ kind }) => kind))].map((kind) => {
    const runs = all.filter((run) => run.kind === kind);
    const [first] = runs as [Sized<Convergence>];
    return {
      what: `2 % RMS, ${kindNames[kind]}, ${listed(runs, ({ lamps }) => `${lamps}`)} lamps, ${sizeOf(first)}, against three-gpu-pathtracer`,
      measured: listed(
        runs,
        (run) =>
          `${time(run.ours.milliseconds)} (${run.ours.samples.toFixed(0)} samples) to ${carried(run)}${time(run.theirs.milliseconds)} (${run.theirs.samples.toFixed(0)}); means ${run.meanRatio.toFixed(3)}`,
      ),
      ratio: `${listed(runs, ({ timesFaster }) => digits(timesFaster))} × less time`,
      goal: `${listed(runs, ({ lamps }) => `${leastFaster[lamps] ?? '–'}`)} ×`,
      isMet: runs.every(({ lamps, timesFaster }) => timesFaster >= (leastFaster[lamps] ?? 0)),
    };
  });
};

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
  ...convergenceRows(posted),
  ...remixRows(posted),
  ...readingRows(posted),
];
