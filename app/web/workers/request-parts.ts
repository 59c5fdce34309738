import type { Setup } from '../../../core/setup/schema/setup.ts';
import type { ReportRequest } from './report-messages.ts';

/** A setup for a request, without the measured beams that the worker was sent last. */
export const withoutKnownBeams = (
  { measuredBeams, ...setup }: Setup,
  sent: Setup['measuredBeams'] | null,
): Pick<ReportRequest, 'setup' | 'measuredBeams'> => ({
  setup,
  measuredBeams: measuredBeams === sent ? null : measuredBeams,
});

/**
 * Puts the setups of requests together again. Messages are copies, but stages and beams are only worked out once for the
 * very same objects: those of the last request are handed on as long as they have not changed.
 */
export const setupKeeper = (): ((request: ReportRequest) => Setup) => {
  let stage: { key: number; subjects: Setup['subjects']; ground: Setup['ground'] } | null = null;
  let beams: Setup['measuredBeams'] = [];
  return ({ stageKey, setup, measuredBeams }) => {
    if (stage?.key !== stageKey) stage = { key: stageKey, subjects: setup.subjects, ground: setup.ground };
    beams = measuredBeams ?? beams;
    return { ...setup, subjects: stage.subjects, ground: stage.ground, measuredBeams: beams };
  };
};
