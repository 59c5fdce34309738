import { mkdirSync, writeFileSync } from 'node:fs';
import { basename } from 'node:path';
import { afterAll, expect } from 'vitest';

/** Where test files leave their rows until the run is over. */
export const accuracyFolder = '.reports/accuracy';

/** How far our value may lie from the expected one: a number in its unit, or a share of it. */
export type Tolerance = { readonly absolute: number } | { readonly relative: number };

/** One claim checked against a source outside the project. */
export interface AccuracyRow {
  /** Row of the check values, or the test's own short name. */
  readonly id: string;
  readonly claim: string;
  /** Published source; "from memory" or "common practice, no published source" where that is so. */
  readonly source: string;
  /** Of both values; empty for a pure number. */
  readonly unit: string;
  readonly expected: number;
  readonly ours: number;
  readonly tolerance: Tolerance;
}

/** All rows of one section, as a test file leaves them. */
export interface AccuracySection {
  readonly title: string;
  readonly rows: readonly AccuracyRow[];
  /** Whether any test of the file failed, be it before its check. */
  readonly hasFailed: boolean;
}

/** What of a test or a group of tests is looked at. */
interface Task {
  readonly result?: { readonly state?: string };
  readonly tasks?: readonly Task[];
}
const hasFailed = ({ result, tasks = [] }: Task): boolean => result?.state === 'fail' || tasks.some(hasFailed);

/** Error in the terms of its tolerance: absolute or relative. */
export const errorOf = ({ expected, ours, tolerance }: AccuracyRow): number =>
  'absolute' in tolerance ? Math.abs(ours - expected) : Math.abs(ours / expected - 1);

/** Error as a share of what is allowed. */
export const shareOfTolerance = (row: AccuracyRow): number => {
  const allowed = 'absolute' in row.tolerance ? row.tolerance.absolute : row.tolerance.relative;
  return allowed > 0 ? errorOf(row) / allowed : errorOf(row) > 0 ? Number.POSITIVE_INFINITY : 0;
};

/**
 * A section of ACCURACY.md. `check` asserts that a value is within its tolerance and records it, so that the table is
 * made of what was tested and of nothing else. Call it once for each file and title, at the top of the file.
 */
export const accuracySection = (title: string): { check: (row: AccuracyRow) => void } => {
  const rows: AccuracyRow[] = [];
  // biome-ignore lint/correctness/noEmptyPattern: vitest reads from here which fixtures are wanted: none
  afterAll(({}, suite) => {
    mkdirSync(accuracyFolder, { recursive: true });
    const file = `${basename(expect.getState().testPath ?? 'unknown')}-${title.replace(/\W+/g, '-')}.json`;
    writeFileSync(
      `${accuracyFolder}/${file}`,
      JSON.stringify({ title, rows, hasFailed: hasFailed(suite as Task) } satisfies AccuracySection),
    );
  });
  return {
    check: (row) => {
      rows.push(row);
      const text = `${row.id} ${row.claim}: ${row.ours} against ${row.expected} ${row.unit}`;
      expect(shareOfTolerance(row), text).toBeLessThanOrEqual(1);
    },
  };
};
