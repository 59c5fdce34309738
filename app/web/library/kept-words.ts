import type { SetupSummary } from '../storage/records.ts';

const clock = new Intl.DateTimeFormat('en-GB', { hour: '2-digit', minute: '2-digit' });
const dayOfYear = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short' });
const dayAndYear = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric' });

/** When something was, as seen from now: "14:20", "yesterday 14:20", "12 Mar", "12 Mar 2024". Milliseconds since 1970. */
export const whenWords = (then: number, now: number): string => {
  const [day, today] = [new Date(then), new Date(now)];
  const nights = Math.round((new Date(now).setHours(12, 0, 0, 0) - new Date(then).setHours(12, 0, 0, 0)) / 86_400_000);
  if (nights === 0) return clock.format(day);
  if (nights === 1) return `yesterday ${clock.format(day)}`;
  return (day.getFullYear() === today.getFullYear() ? dayOfYear : dayAndYear).format(day);
};

/** From so many bytes on, the list says how large a setup is. */
const largeBytes = 1_000_000;

/** What stands under the name of a kept setup: "14:20 · copy of a sample · 2.1 MB". */
export const summaryWords = ({ changedAt, sampleId, bytes }: SetupSummary, now: number): string =>
  [
    whenWords(changedAt, now),
    ...(sampleId === null ? [] : ['copy of a sample']),
    ...(bytes < largeBytes ? [] : [`${(bytes / 1e6).toFixed(1)} MB`]),
  ].join(' · ');
