import { curveLines } from './curves.ts';
import { dragLine } from './drag.ts';
import { growthLines, type RayRates } from './growth.ts';
import type { Lm63ParseTimes } from './lm63-parse.ts';
import { type LoadTimes, loadLines } from './load.ts';
import { movingPassLines } from './moving-pass.ts';
import type { Curve } from './page/curves.ts';
import type { SampleTimes } from './page/growth.ts';
import type { DragTimes } from './page/moved-subject.ts';
import type { Convergence } from './page/moving-pass.ts';
import type { SweepTimes } from './page/sweep.ts';
import { type Posted, resultsOf } from './page-runs.ts';
import { type ScanTimes, scanLine } from './scan.ts';
import { type SkyTimes, skyLines } from './sky.ts';
import { sweepLine } from './sweep.ts';
import { type TreeTimes, treeLines } from './tree.ts';

/** What ran in Node; nothing where the pages ran elsewhere. */
export interface NodeTimes {
  readonly rays?: Readonly<Record<'finer' | 'closer', RayRates[]>>;
  readonly lm63Parse?: Lm63ParseTimes;
  readonly trees?: readonly TreeTimes[];
  readonly sky?: SkyTimes;
  readonly scan?: ScanTimes;
  readonly load?: LoadTimes;
}

const parseLine = ({ bytes, values, firstMs, medianMs }: Lm63ParseTimes): string =>
  `Photometric file of ${(bytes / 1e6).toFixed(2)} MB, ${values} values: ${firstMs.toFixed(0)} ms at first, ${medianMs.toFixed(0)} ms once warm (bar: 100 ms)`;

/** All that the table leaves out, in lines. */
export const otherLines = (posted: readonly Posted[], { rays, lm63Parse, trees, sky, scan, load }: NodeTimes): string =>
  [
    ...resultsOf<Curve>(posted, 'curves').map(curveLines),
    ...resultsOf<{ growth: 'finer' | 'closer'; samples: SampleTimes[] }>(posted, 'growth').map(({ growth, samples }) =>
      growthLines({ growth, samples, rays: rays?.[growth] ?? [] }),
    ),
    ...resultsOf<DragTimes>(posted, 'moved-subject').map(dragLine),
    ...resultsOf<{ found: Convergence[] }>(posted, 'moving-pass').map(({ found }) => movingPassLines(found)),
    ...resultsOf<SweepTimes>(posted, 'sweep').map(sweepLine),
    ...(lm63Parse ? [parseLine(lm63Parse)] : []),
    ...(trees ? [treeLines(trees)] : []),
    ...(sky ? [skyLines(sky)] : []),
    ...(scan ? [scanLine(scan)] : []),
    ...(load ? [loadLines(load)] : []),
  ].join('\n');
