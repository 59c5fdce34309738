import type { Parsed } from '../ui/ParsedField.tsx';

const [nearestKm, farthestKm] = [0.05, 300];

/** "12", "12 km", "800 m", or "clear". */
export const parseVisibility = (text: string): Parsed<number | null> => {
  if (/^\s*(clear|none)?\s*$/i.test(text)) return { value: null };
  const match = /^\s*(\d*[.,]?\d+)\s*(km|m)?\s*$/i.exec(text);
  const km = match ? Number(match[1]?.replace(',', '.')) / (match[2]?.toLowerCase() === 'm' ? 1000 : 1) : Number.NaN;
  return km >= nearestKm && km <= farthestKm
    ? { value: km }
    : { problem: `Type kilometres, ${nearestKm} to ${farthestKm}, or “clear”.` };
};
