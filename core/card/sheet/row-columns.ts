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
  ['number', '', 9.5],
  ['clock', 'clock', 19.2],
  ['paces', 'paces', 13.3],
  ['height', 'lamp', 19.3],
  ['aim', 'aim at', 21],
  ['level', 'level', 22.2],
  ['gel', 'gel', 19.6],
  ['count', 'COUNT', 17],
  ['strokes', 'strokes', 13.4],
  ['frame', 'frame', 11],
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
