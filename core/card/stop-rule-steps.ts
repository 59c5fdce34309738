import type { Setup } from '../setup/schema/setup.ts';

/** How a pass was gone, or is to be gone, on the night: as planned, but for these. */
export interface Going {
  /** Lamp on, all strokes together. */
  readonly seconds: number;
  /** Of the lamp from the mark, as a multiple of the planned distance. */
  readonly distanceTimes: number;
  /** Clock positions round the mark from the planned one; clockwise seen from above. */
  readonly hoursMoved: number;
  /** Of the lamp over the ground, as a multiple of the planned height. */
  readonly heightTimes: number;
}

export type Verdict = Setup['nights'][number]['runs'][number]['verdict'];

/** What the rules must know of a pass to keep to what can be done. */
export interface GoingLimits {
  /** From when the lamp goes on to when the shutter closes. */
  readonly mostSeconds: number;
  /** Nobody counts: a lamp on a stand that shines as long as the shutter is open. */
  readonly staysOn: boolean;
  /** Where the lamp is planned, 0 to 12; the camera at six. */
  readonly clockHours: number;
}

/** Counts under this are not halved: nobody counts half a second. Our choice. */
const leastSeconds = 1;
/** A step back that halves the light: ×1.4 to people (trade practice), √2 by the inverse square. */
const stepTimes = Math.SQRT2;
const [leastTimes, mostTimes] = [0.01, 100];

const withinTimes = (times: number): number => Math.min(mostTimes, Math.max(leastTimes, times));

/** The clock position after so many hours, in [0, 12). */
export const movedHours = (clockHours: number, hoursMoved: number): number =>
  (((clockHours + hoursMoved) % 12) + 12) % 12;

/** One hour away from the camera at six, as far as three-quarter back (ten or two o’clock), where a lamp is least flat. */
const hourOn = (hours: number): 1 | -1 => {
  if (hours >= 6) return hours < 10 ? 1 : -1;
  return hours > 2 ? -1 : 1;
};

/**
 * The stop rules (common practice, no published source): too bright, halve the count or step back ×1.4; too dark, double it;
 * flat, lower the lamp by half and move one hour round the clock, away from the camera. Where a count can’t be halved or doubled
 * (under a second, past the shutter, a lamp that stays on) the lamp goes farther or nearer instead, which is as many stops.
 *
 * @param going how it was gone
 * @returns how to go next; the same object where nothing is to change
 */
export const afterVerdict = (going: Going, verdict: Verdict, limits: GoingLimits): Going => {
  const { seconds, distanceTimes, hoursMoved, heightTimes } = going;
  if (verdict === 'too-bright')
    return !limits.staysOn && seconds / 2 >= leastSeconds
      ? { ...going, seconds: seconds / 2 }
      : { ...going, distanceTimes: withinTimes(distanceTimes * stepTimes) };
  if (verdict === 'too-dark')
    return !limits.staysOn && seconds * 2 <= limits.mostSeconds
      ? { ...going, seconds: seconds * 2 }
      : { ...going, distanceTimes: withinTimes(distanceTimes / stepTimes) };
  if (verdict !== 'flat') return going;
  const moved = hoursMoved + hourOn(movedHours(limits.clockHours, hoursMoved));
  return { ...going, hoursMoved: Math.max(-12, Math.min(12, moved)), heightTimes: withinTimes(heightTimes / 2) };
};
