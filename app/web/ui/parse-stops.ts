/** Stops as they are written: "-1.5", "−1.5 stops", "+1/3", "0"; null when it can't be read. */
export const parseStops = (text: string): number | null => {
  const match = /^\s*([+\-−]?)(\d*[.,]?\d+)(?:\/(\d+))?\s*(?:stops?)?\s*$/i.exec(text);
  if (!match) return null;
  const [, sign, digits = '', divisor = '1'] = match;
  const value = Number(digits.replace(',', '.')) / Number(divisor);
  if (!Number.isFinite(value)) return null;
  return sign === '-' || sign === '−' ? 0 - value : value;
};
