import { nightHours } from '../state/night-run.ts';

const two = (n: number): string => String(n).padStart(2, '0');

/** The clock of this machine, as the document writes times: 2026-10-09T22:30:05. */
export const localText = (date: Date): string =>
  `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}T${two(date.getHours())}:${two(date.getMinutes())}:${two(date.getSeconds())}`;

interface Begun {
  readonly schemeId: string;
  readonly startedAt: string;
}

/** The night that is under way with a scheme; null when the next pass begins a new one. */
export const nightUnderWay = <T extends Begun>(nights: readonly T[], schemeId: string, now: Date): T | null => {
  const night = nights.findLast((each) => each.schemeId === schemeId);
  const hours = night ? (now.getTime() - new Date(night.startedAt).getTime()) / 3_600_000 : Number.NaN;
  return night && hours >= 0 && hours < nightHours ? night : null;
};
