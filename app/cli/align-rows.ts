/** Rows with their cells padded so that columns stand under each other; two blanks between, no blanks at the end. */
export const alignedRows = (rows: readonly (readonly string[])[], leftColumns: ReadonlySet<number>): string[] => {
  const width = (text: string) => [...text].length;
  const widths = (rows[0] ?? []).map((_, c) => Math.max(...rows.map((row) => width(row[c] as string))));
  const filled = (text: string, c: number) => {
    const blank = ' '.repeat((widths[c] as number) - width(text));
    return leftColumns.has(c) ? text + blank : blank + text;
  };
  return rows.map((row) => `  ${row.map(filled).join('  ')}`.trimEnd());
};
