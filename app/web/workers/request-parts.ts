import type { Setup } from '../../../core/setup/schema/setup.ts';
import { keepSame } from './keep-same.ts';
import type { ReportRequest } from './report-messages.ts';

/** A setup for a request, without the measured beams and the scans that the worker was sent last. */
export const withoutKnownFiles = (
  { measuredBeams, scans, ...setup }: Setup,
  sent: Pick<Setup, 'measuredBeams' | 'scans'> | null,
): Pick<ReportRequest, 'setup' | 'measuredBeams' | 'scans'> => ({
  setup,
  measuredBeams: measuredBeams === sent?.measuredBeams ? null : measuredBeams,
  scans: scans === sent?.scans ? null : scans,
});

/**
 * Puts the setups of requests together again. Messages are copies, but stages, beams and scans are only worked out once
 * for the very same objects: those of the last request are handed on as long as they have not changed, down to the parts
 * of a subject that moved.
 */
export const setupKeeper = (): ((request: ReportRequest) => Setup) => {
  let stage: { key: number; subjects: Setup['subjects']; ground: Setup['ground'] } | null = null;
  let files: Pick<Setup, 'measuredBeams' | 'scans'> = { measuredBeams: [], scans: [] };
  return ({ stageKey, setup, measuredBeams, scans }) => {
    if (stage?.key !== stageKey)
      stage = {
        key: stageKey,
        subjects: keepSame(stage?.subjects, setup.subjects),
        ground: keepSame(stage?.ground, setup.ground),
      };
    files = { measuredBeams: measuredBeams ?? files.measuredBeams, scans: scans ?? files.scans };
    return { ...setup, subjects: stage.subjects, ground: stage.ground, ...files };
  };
};
