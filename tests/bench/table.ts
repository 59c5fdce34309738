/** A line of the table. */
export interface Row {
  readonly what: string;
  readonly measured: string;
  readonly ratio: string;
  readonly goal: string;
  /** Null where there is no goal. */
  readonly isMet: boolean | null;
}

const met = ({ isMet }: Row): string => (isMet === null ? '' : isMet ? 'yes' : '**no**');

const head = ['what', 'measured', 'ratio', 'goal', 'met?'];
const cellsOf = (row: Row): string[] => [row.what, row.measured, row.ratio, row.goal, met(row)];

export const markdownOf = (rows: readonly Row[]): string =>
  [head, head.map(() => '---'), ...rows.map(cellsOf)].map((cells) => `| ${cells.join(' | ')} |`).join('\n');

/** For a terminal: columns as wide as their widest cell. */
export const plainOf = (rows: readonly Row[]): string => {
  const lines = [head, ...rows.map(cellsOf)].map((cells) => cells.map((cell) => cell.replaceAll('**', '')));
  const widths = head.map((_, column) => Math.max(...lines.map((cells) => (cells[column] as string).length)));
  return lines
    .map((cells) =>
      cells
        .map((cell, column) => cell.padEnd(widths[column] as number))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
};
