import type { SchemeReport } from '../../../core/cautions/setup-report.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';

export interface ReportRequest {
  readonly id: number;
  /** Changes when subjects, ground or scans change. */
  readonly stageKey: number;
  readonly setup: Omit<Setup, 'measuredBeams' | 'scans'>;
  /** Null when they are those of the request before: large files are not copied with every change. */
  readonly measuredBeams: Setup['measuredBeams'] | null;
  readonly scans: Setup['scans'] | null;
  readonly schemeIds: readonly string[];
}

export interface ReportAnswer {
  readonly id: number;
  readonly reports: readonly SchemeReport[];
}
