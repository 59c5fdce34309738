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
  | 'done'
  | 'did';

/** All but the last, which takes what is left. */
const fixed: readonly (readonly [ColumnKey, string, number])[] = [
  ['number', '', 9.2],
  ['clock', 'clock', 19],
  ['paces', 'paces', 12.8],
  ['height', 'lamp', 18.2],
  ['aim', 'aim at', 21],
  ['level', 'level', 21.2],
  ['gel', 'gel', 19.6],
  ['count', 'COUNT', 16.6],
  ['strokes', 'frame', 14.8],
  ['done', '', 6.4],
];

/** The columns of a table of a width. */
export const rowColumns = (widthMm: number): Column[] => {
  const taken = fixed.reduce((sum, [, , width]) => sum + width, 0);
  return [
    ...fixed.map(([key, head, width]): Column => ({ key, head, widthMm: width })),
    { key: 'did', head: 'I did', widthMm: widthMm - taken },
  ];
};
