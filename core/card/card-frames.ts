import type { SchemeReport } from '../cautions/setup-report.ts';
import type { Frame, Scheme, Setup } from '../setup/schema/setup.ts';
import { infinityMetres } from '../units/focus-range.ts';
import type { CardRow } from './card-row.ts';
import type { CardFrame, FocusStackLine } from './field-card.ts';

const focusOf = ({ focusMetres }: Frame): number | null => (focusMetres >= infinityMetres ? null : focusMetres);

/** Whether two frames are exposed alike, whatever they are focused at. */
const isExposedAlike = (a: Frame, b: Frame): boolean =>
  a.purpose === b.purpose &&
  a.aperture === b.aperture &&
  a.seconds === b.seconds &&
  a.iso === b.iso &&
  a.whiteBalance.kelvin === b.whiteBalance.kelvin;

/** Frames that follow each other, put together while `belongs` says so of the last and the next. */
const runsOf = (frames: readonly Frame[], belongs: (last: Frame, next: Frame) => boolean): Frame[][] => {
  const runs: Frame[][] = [];
  for (const frame of frames) {
    const run = runs.at(-1);
    const last = run?.at(-1);
    if (run && last && belongs(last, frame)) run.push(frame);
    else runs.push([frame]);
  }
  return runs;
};

const isAgain = (a: Frame, b: Frame): boolean =>
  isExposedAlike(a, b) && a.focusMetres === b.focusMetres && a.passes.length === 0 && b.passes.length === 0;

/** The camera block: a line per shutter opening, like ones without passes as one with their count and the gap between. */
export const cardFrames = (
  setup: Setup,
  scheme: Scheme,
  report: SchemeReport,
  rows: readonly CardRow[],
): CardFrame[] => {
  const { focalLengthMm } = scheme.camera ?? setup.camera;
  return runsOf(scheme.frames, isAgain).map((run): CardFrame => {
    const frame = run[0] as Frame;
    const number = scheme.frames.indexOf(frame) + 1;
    // readings may trail the scheme
    const depth = report.frames[number - 1]?.depth ?? null;
    return {
      number,
      frameId: frame.id,
      name: frame.name,
      purpose: frame.purpose,
      focalLengthMm,
      aperture: frame.aperture,
      seconds: frame.seconds,
      iso: frame.iso,
      kelvin: frame.whiteBalance.kelvin,
      focusMetres: focusOf(frame),
      sharpFromMetres: depth?.nearMetres ?? null,
      sharpToMetres: depth?.farMetres ?? null,
      delaySeconds: frame.delaySeconds,
      gapSeconds: run[1]?.delaySeconds ?? null,
      count: run.length,
      rowNumbers: rows.filter(({ frameNumber }) => frameNumber === number).map((row) => row.number),
    };
  });
};

/** Frames that follow each other, are exposed alike and focused at different distances: one turns the ring between them. */
export const focusStacks = ({ frames }: Scheme): FocusStackLine[] =>
  runsOf(frames, (a, b) => isExposedAlike(a, b) && a.focusMetres !== b.focusMetres).flatMap((run): FocusStackLine[] =>
    run.length > 1
      ? [{ frameNumbers: run.map((frame) => frames.indexOf(frame) + 1), focusMetres: run.map(focusOf) }]
      : [],
  );
