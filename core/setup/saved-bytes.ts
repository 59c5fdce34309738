import { formatSetup } from './format-setup.ts';
import type { Setup, Subject } from './schema/setup.ts';

/** How long a value is as the file writes it, when nothing is round it. */
interface Written {
  readonly bytes: number;
  readonly lineEnds: number;
}

const known = new WeakMap<object, Written>();
const encoder = new TextEncoder();

/** Worked out once for each object: an edit leaves most of a setup as it was. */
const written = (value: object, write: () => Written): Written => {
  const before = known.get(value);
  if (before) return before;
  const made = write();
  known.set(value, made);
  return made;
};

const writtenPlainly = (value: object): Written =>
  written(value, () => {
    const text = formatSetup(value as Setup).trimEnd();
    return { bytes: encoder.encode(text).length, lineEnds: text.split('\n').length - 1 };
  });

/** A value with a list in it, which was left empty, filled in. `depth` is that of the list's own line. */
const filled = (around: Written, items: readonly Written[], depth: number): Written => {
  if (items.length === 0) return around;
  const indent = 2 * (depth + 1);
  const bytes = items.reduce((sum, item) => sum + item.bytes + indent * (item.lineEnds + 1), 0);
  // a line end before each and before the closing bracket, a comma between
  const between = items.length + 1 + (items.length - 1) + 2 * depth;
  const lineEnds = items.reduce((sum, item) => sum + item.lineEnds, items.length + 1);
  return { bytes: around.bytes + bytes + between, lineEnds: around.lineEnds + lineEnds };
};

const writtenSubject = (subject: Subject): Written =>
  written(subject, () => filled(writtenPlainly({ ...subject, parts: [] }), subject.parts.map(writtenPlainly), 1));

/**
 * Bytes of UTF-8 that `formatSetup` makes of a setup, without writing all of it: subjects, parts, schemes and scans are
 * counted once for each object. The data of scans is counted by its letters.
 */
export const savedBytes = (setup: Setup): { readonly all: number; readonly ofScanData: number } => {
  const { subjects, schemes, measuredBeams, scans } = setup;
  const around = writtenPlainly({ ...setup, subjects: [], schemes: [], measuredBeams: [], scans: [] });
  const bareScans = scans.map((scan) => writtenPlainly({ ...scan, data: '' }));
  const lists = [
    subjects.map(writtenSubject),
    schemes.map(writtenPlainly),
    measuredBeams.map(writtenPlainly),
    bareScans,
  ];
  const { bytes } = lists.reduce((so, items) => filled(so, items, 1), around);
  const ofScanData = scans.reduce((sum, { data }) => sum + data.length, 0);
  // the file ends with a line end
  return { all: bytes + 1 + ofScanData, ofScanData };
};
