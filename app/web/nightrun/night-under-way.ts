import { nightHours } from '../state/night-run.ts';

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
