/** Columns of the table of passes: what stands over them, and how wide they are in millimetres. */
export interface Column {
  readonly key: ColumnKey;
  readonly head: string;
  readonly widthMm: number;
}

export type ColumnKey =
  | 'number'
  | 'clock'
  | 'paces'
  | 'height'
  | 'aim'
  | 'level'
  | 'gel'
  | 'count'
  | 'strokes'
  | 'frame'
  | 'done'
  | 'did';

/** All but the last, which takes what is left. */
const fixed: readonly (readonly [ColumnKey, string, number])[] = [
  ['number', '', 10],
  ['clock', 'clock', 20],
  ['paces', 'paces', 13.5],
  ['height', 'lamp', 20],
  ['aim', 'aim at', 22.5],
  ['level', 'level', 19.5],
  ['gel', 'gel', 16],
  ['count', 'COUNT', 18.5],
  ['strokes', 'strokes', 14],
  ['frame', 'frame', 11.5],
  ['done', '', 6.5],
];

/** The columns of a table of a width. */
export const rowColumns = (widthMm: number): Column[] => {
  const taken = fixed.reduce((sum, [, , width]) => sum + width, 0);
  return [
    ...fixed.map(([key, head, width]): Column => ({ key, head, widthMm: width })),
    { key: 'did', head: 'I did', widthMm: widthMm - taken },
  ];
};
