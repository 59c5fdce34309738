import type { Parsed } from '../ui/ParsedField.tsx';

const months = ['jan', 'feb', 'mar', 'apr', 'may', 'jun', 'jul', 'aug', 'sep', 'oct', 'nov', 'dec'] as const;

const dateProblem = 'Type a date such as 2026-10-09 or 9 Oct 2026.';
const timeProblem = 'Type a time such as 22:30, 2230 or 10:30 pm.';

/** Years that the bodies of the sky are worked out for, well within what the model of them holds for. */
const [firstYear, lastYear] = [1900, 2199] as const;

const two = (value: number) => String(value).padStart(2, '0');

const dated = (year: number, month: number, day: number): Parsed<string> => {
  if (year < firstYear || year > lastYear) return { problem: `Years ${firstYear} to ${lastYear} only.` };
  const text = `${year}-${two(month)}-${two(day)}`;
  const date = new Date(`${text}T00:00Z`);
  const exists = Number.isFinite(date.getTime()) && date.toISOString().startsWith(text);
  return exists ? { value: text } : { problem: 'There is no such day.' };
};

/** "2026-10-09", "9 Oct 2026", "9 Oct" in the year given. Figures with dots or strokes are not taken: they mean two days. */
export const parseDate = (typed: string, year: number): Parsed<string> => {
  const text = typed.trim().toLowerCase();
  const iso = /^(\d{4})-(\d{1,2})-(\d{1,2})$/.exec(text);
  if (iso) return dated(Number(iso[1]), Number(iso[2]), Number(iso[3]));
  const words = /^(?:[a-z]{2,9},?\s+)?(\d{1,2})\.?\s*([a-z]{3,9})\.?(?:,?\s*(\d{4}))?$/.exec(text);
  const month = months.findIndex((name) => words?.[2]?.startsWith(name)) + 1;
  if (!words || month === 0) return { problem: dateProblem };
  return dated(Number(words[3] ?? year), month, Number(words[1]));
};

/** "22:30", "22.30", "2230", "10:30 pm", "9pm". */
export const parseTime = (typed: string): Parsed<string> => {
  const match = /^(\d{1,2})(?:[:.h ]?(\d{2}))?\s*([ap])?\.?m?\.?$/i.exec(typed.trim());
  if (!match) return { problem: timeProblem };
  const half = match[3]?.toLowerCase();
  const [hour, minute] = [Number(match[1]), Number(match[2] ?? 0)];
  if (minute > 59 || hour > (half ? 12 : 23) || (half && hour === 0)) return { problem: timeProblem };
  return { value: `${two(half ? (hour % 12) + (half === 'p' ? 12 : 0) : hour)}:${two(minute)}` };
};
