/** "35 %", "0.4 %". */
export const percentText = (share: number): string =>
  `${100 * share < 1 ? Number((100 * share).toFixed(1)) : Math.round(100 * share)} %`;
