import type { ReportAnswer, ReportRequest } from '../../../app/web/workers/report-messages.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { median } from './timing.ts';

/** Milliseconds from a question to the page’s report worker to its answer, for all schemes of a setup together. */
export interface ReadingTimes {
  readonly setup: string;
  readonly schemes: number;
  readonly passes: number;
  /** The first question, with the stage to build; median of those after a lamp was moved. */
  readonly firstMs: number;
  readonly movedMs: number;
}

const withMovedLamps = (setup: Setup, metres: number): Setup => ({
  ...setup,
  schemes: setup.schemes.map((scheme) => ({
    ...scheme,
    frames: scheme.frames.map((frame) => ({
      ...frame,
      passes: frame.passes.map((pass) => ({
        ...pass,
        waypoints: pass.waypoints.map(({ position: [east, north, up], ...rest }) => ({
          ...rest,
          position: [east + metres, north, up] as [number, number, number],
        })),
      })),
    })),
  })),
});

/** Asks as the page does: a copy of the whole setup each time, the stage’s key the same as long as nothing of it changed. */
export const benchReadings = async (text: string, rounds: number): Promise<ReadingTimes> => {
  const setup = parseSetup(text);
  const worker = new Worker(new URL('../../../app/web/workers/report.worker.ts', import.meta.url), { type: 'module' });
  const ask = async (asked: Setup, id: number): Promise<number> => {
    const { measuredBeams, scans, ...rest } = asked;
    const request: ReportRequest = {
      id,
      stageKey: 1,
      setup: rest,
      measuredBeams: id === 0 ? measuredBeams : null,
      scans: id === 0 ? scans : null,
      schemeIds: asked.schemes.map((scheme) => scheme.id),
    };
    const start = performance.now();
    const answer = await new Promise<ReportAnswer>((resolve, reject) => {
      worker.onmessage = ({ data }: MessageEvent<ReportAnswer>) => resolve(data);
      worker.onerror = ({ message }) => reject(new Error(message));
      worker.postMessage(request);
    });
    if (answer.reports.length !== asked.schemes.length) throw new Error('a scheme was not read');
    return performance.now() - start;
  };
  const firstMs = await ask(setup, 0);
  const moved: number[] = [];
  for (let round = 1; round <= rounds; round++) moved.push(await ask(withMovedLamps(setup, 0.05 * round), round));
  worker.terminate();
  return {
    setup: setup.name,
    schemes: setup.schemes.length,
    passes: setup.schemes.flatMap(({ frames }) => frames.flatMap(({ passes }) => passes)).length,
    firstMs,
    movedMs: median(moved),
  };
};
