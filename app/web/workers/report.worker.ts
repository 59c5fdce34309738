import { reportScheme } from '../../../core/cautions/setup-report.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import type { ReportAnswer, ReportRequest } from './report-messages.ts';

/** The last stage's ingredients: messages are copies, but a stage is only shared by the very same objects. */
let known: { key: number; subjects: Setup['subjects']; ground: Setup['ground'] } | null = null;

self.onmessage = ({ data }: MessageEvent<ReportRequest>) => {
  const { id, stageKey, setup, schemeIds } = data;
  if (known?.key !== stageKey) known = { key: stageKey, subjects: setup.subjects, ground: setup.ground };
  const shared: Setup = { ...setup, subjects: known.subjects, ground: known.ground };
  const reports = shared.schemes
    .filter((scheme) => schemeIds.includes(scheme.id))
    .map((scheme) => reportScheme(shared, scheme));
  const answer: ReportAnswer = { id, reports };
  self.postMessage(answer);
};
