/** Sizes of paper, upright, millimetres. */
export const paperSizes = {
  /** ISO 216. */
  a4: { widthMm: 210, heightMm: 297 },
  /** ANSI/ASME Y14.1, size A: 8.5 x 11 inches of 25.4 mm. */
  letter: { widthMm: 215.9, heightMm: 279.4 },
} as const;

export type Paper = keyof typeof paperSizes;

/** White round the page: more than what printers leave white. Common practice, no published source. */
export const marginMm = 8;

/** The point of desktop publishing: 1/72 of an inch of 25.4 mm (ISO 32000-1, 8.3.2.3: default user space). */
export const millimetresPerPoint = 25.4 / 72;
