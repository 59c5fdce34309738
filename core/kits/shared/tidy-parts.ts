import type { PartDraft } from '../kit.ts';

/** Decimals kept: hundredths of a millimetre, and of degrees what moves the end of a 10 m timber by less. */
const decimals = 5;

const tidy = (value: unknown): unknown => {
  // adding nought turns minus nought into nought
  if (typeof value === 'number') return Number(value.toFixed(decimals)) + 0;
  if (Array.isArray(value)) return value.map(tidy);
  if (typeof value === 'object' && value !== null)
    return Object.fromEntries(Object.entries(value).map(([key, child]) => [key, tidy(child)]));
  return value;
};

/** The same parts with short numbers, so that documents stay small and can be read. */
export const tidyParts = (parts: readonly PartDraft[]): PartDraft[] => tidy(parts) as PartDraft[];
