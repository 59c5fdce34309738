import { type AccuracyRow, type AccuracySection, errorOf, shareOfTolerance } from './accuracy.ts';

const figures = (value: number, digits: number): string =>
  value === 0 ? '0' : String(Number(value.toPrecision(digits)));
const toleranceText = ({ tolerance, unit }: AccuracyRow): string =>
  'absolute' in tolerance
    ? `${figures(tolerance.absolute, 3)} ${unit}`.trim()
    : `${figures(100 * tolerance.relative, 3)} %`;
const errorText = (row: AccuracyRow): string =>
  'absolute' in row.tolerance
    ? `${figures(errorOf(row), 2)} ${row.unit}`.trim()
    : `${figures(100 * errorOf(row), 2)} %`;
const cell = (text: string): string => text.replaceAll('|', '\\|').replaceAll('\n', ' ');

/** Sections of the same title, from however many files, as one; in the order of their titles. */
export const mergeSections = (parts: readonly AccuracySection[]): AccuracySection[] => {
  const titles = [...new Set(parts.map(({ title }) => title))];
  return titles
    .map((title) => ({ title, own: parts.filter((part) => part.title === title) }))
    .map(({ title, own }) => ({
      title,
      rows: own.flatMap(({ rows }) => rows),
      hasFailed: own.some((part) => part.hasFailed),
    }))
    .map(({ title, rows, hasFailed }) => ({
      title,
      hasFailed,
      rows: rows.sort(
        (a, b) => a.id.localeCompare(b.id, 'en', { numeric: true }) || a.claim.localeCompare(b.claim, 'en'),
      ),
    }))
    .sort((a, b) => a.title.localeCompare(b.title, 'en'));
};

/** The row that comes nearest to its tolerance. */
export const worstRow = ({ rows }: AccuracySection): AccuracyRow =>
  rows.reduce((worst, row) => (shareOfTolerance(row) > shareOfTolerance(worst) ? row : worst));

/** One line for the terminal: how many checks a section has, and the worst error with its tolerance. */
export const summaryLine = (section: AccuracySection): string => {
  const worst = worstRow(section);
  return `${section.title}: ${section.rows.length} checks, worst ${errorText(worst)} of ${toleranceText(worst)} allowed (${worst.id})`;
};

const tableOf = ({ title, rows }: AccuracySection): string[] => [
  `## ${title}`,
  '',
  '| row | claim | source | expected | ours | error | allowed |',
  '|---|---|---|---|---|---|---|',
  ...rows.map((row) => {
    const unit = row.unit ? ` ${row.unit}` : '';
    const values = [`${figures(row.expected, 7)}${unit}`, `${figures(row.ours, 7)}${unit}`];
    return `| ${[row.id, row.claim, row.source, ...values, errorText(row), toleranceText(row)].map(cell).join(' | ')} |`;
  }),
  '',
];

/** ACCURACY.md. */
export const accuracyTable = (sections: readonly AccuracySection[]): string => {
  const count = sections.reduce((sum, { rows }) => sum + rows.length, 0);
  return [
    '# Accuracy',
    '',
    'Made by `npm test` from what its reference tests check; do not edit. Each row is one claim, the source outside the',
    'project that it is held to, and how far we are from it. Row numbers are those of the project’s check values.',
    '',
    `${count} checks in ${sections.length} sections.`,
    '',
    '| section | checks | worst error | allowed there | row |',
    '|---|---|---|---|---|',
    ...sections.map((section) => {
      const worst = worstRow(section);
      return `| ${section.title} | ${section.rows.length} | ${errorText(worst)} | ${toleranceText(worst)} | ${worst.id} |`;
    }),
    '',
    ...sections.flatMap(tableOf),
  ].join('\n');
};
