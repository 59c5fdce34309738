const two = (n: number): string => String(n).padStart(2, '0');

/** The clock of this machine, as the document writes times: 2026-10-09T22:30:05. */
export const localText = (date: Date): string =>
  `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}T${two(date.getHours())}:${two(date.getMinutes())}:${two(date.getSeconds())}`;
