import { reportScheme } from '../../../core/cautions/setup-report.ts';
import type { ReportAnswer, ReportRequest } from './report-messages.ts';
import { setupKeeper } from './request-parts.ts';

const setupOf = setupKeeper();

self.onmessage = ({ data }: MessageEvent<ReportRequest>) => {
  const setup = setupOf(data);
  const reports = setup.schemes
    .filter((scheme) => data.schemeIds.includes(scheme.id))
    .map((scheme) => reportScheme(setup, scheme));
  const answer: ReportAnswer = { id: data.id, reports };
  self.postMessage(answer);
};
