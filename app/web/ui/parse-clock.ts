/** Hours from "2:30", "2.5", "12" or "10 o'clock"; null when it is no place on a clock. */
export const parseClock = (text: string): number | null => {
  const match = /^\s*(\d{1,2})(?:[:.](\d{1,2}))?\s*(?:o['’]clock)?\s*$/i.exec(text);
  if (!match) return null;
  const [, hours = '', rest] = match;
  const fraction = rest === undefined ? 0 : text.includes(':') ? Number(rest) / 60 : Number(`0.${rest}`);
  const value = Number(hours) + fraction;
  return fraction >= 1 || value >= 13 ? null : value % 12;
};
