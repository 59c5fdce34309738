import type { PartDraft } from '../kit.ts';

const tidy = (value: unknown, decimals: number): unknown => {
  // adding nought turns minus nought into nought
  if (typeof value === 'number') return Number(value.toFixed(decimals)) + 0;
  if (Array.isArray(value)) return value.map((child) => tidy(child, decimals));
  if (typeof value === 'object' && value !== null)
    return Object.fromEntries(Object.entries(value).map(([key, child]) => [key, tidy(child, decimals)]));
  return value;
};

/**
 * The same parts with short numbers, so that documents stay small and can be read.
 *
 * @param decimals of metres, degrees and shares; five are hundredths of a millimetre, and of degrees what moves the end
 * of a 10 m timber by less
 */
export const tidyParts = (parts: readonly PartDraft[], decimals = 5): PartDraft[] =>
  tidy(parts, decimals) as PartDraft[];
