import type { NightRun } from '../setup/schema/setup.ts';

/** How a pass was gone, or is to be gone, on the night: as planned, but for these. */
export interface Going {
  /** Lamp on, all strokes together. */
  readonly seconds: number;
  /** Of the lamp from what it is aimed at, as a multiple of the planned distance. */
  readonly distanceTimes: number;
  /** Clock positions round the mark from the planned one; clockwise seen from above. */
  readonly hoursMoved: number;
  /** Of the lamp over the ground, as a multiple of the planned height. */
  readonly heightTimes: number;
  /** Level of the lamp, as a multiple of the planned one. */
  readonly levelTimes: number;
}

/** Where and how high a lamp is, against the plan. */
export type Moved = Pick<Going, 'distanceTimes' | 'hoursMoved' | 'heightTimes'>;

export type Verdict = NightRun['verdict'];

/** What the rules must know of a pass to keep to what can be done and is of use. */
export interface GoingLimits {
  /** From when the lamp goes on to when the shutter closes. */
  readonly mostSeconds: number;
  /** Nobody counts: a lamp on a stand that shines as long as the shutter is open. */
  readonly staysOn: boolean;
  /** Where the lamp was as it was gone, 0 to 12; the camera at six. */
  readonly clockHours: number;
  /** Of the lamp over the ground as planned. */
  readonly heightMetres: number;
  /** How near to what it is aimed at the lamp may go, and how far, as multiples of the planned distance. */
  readonly leastTimes: number;
  readonly mostTimes: number;
  /** As low as the lamp can be dimmed, as a multiple of the planned level; 1 where it can’t. */
  readonly leastLevelTimes: number;
}

/** The shortest count that is spoken in the dark: none is halved to less. Common practice, no published source. */
export const leastSeconds = 2;
/** A lamp lower over the ground than this lights little but the ground before it. Our choice; the trade lays lamps on it. */
export const leastHeightMetres = 0.1;
/** A step back that halves the light: ×1.4 to people (trade practice), √2 by the inverse square. */
const stepTimes = Math.SQRT2;
/** What the document holds of heights. */
const leastHeightTimes = 0.01;
/** A lamp so near to three or nine is there, hours. */
const atSideHours = 0.25;

/** The clock position after so many hours, in [0, 12). */
export const movedHours = (clockHours: number, hoursMoved: number): number =>
  (((clockHours + hoursMoved) % 12) + 12) % 12;

/** Hours that a flat light moves on: away from the camera at six, as far as three or nine; past these it would be back light. */
const hoursOn = (hours: number): number => {
  const [toNine, toThree] = [9 - hours, 3 - hours];
  if (hours >= 6) return toNine > atSideHours ? Math.min(1, toNine) : 0;
  return -toThree > atSideHours ? Math.max(-1, toThree) : 0;
};

const loweredTimes = ({ heightTimes }: Going, { heightMetres }: GoingLimits): number => {
  const now = heightMetres * heightTimes;
  if (now <= leastHeightMetres + 1e-6) return heightTimes;
  return Math.max(leastHeightTimes, Math.max(leastHeightMetres, now / 2) / heightMetres);
};

const farther = (going: Going, times: number, { leastTimes, mostTimes }: GoingLimits): Going => {
  const distanceTimes = going.distanceTimes * times;
  const isWithin = distanceTimes >= leastTimes - 1e-9 && distanceTimes <= mostTimes + 1e-9;
  return isWithin ? { ...going, distanceTimes } : going;
};

const darker = (going: Going, limits: GoingLimits): Going => {
  const { seconds, levelTimes } = going;
  if (!limits.staysOn && seconds / 2 >= leastSeconds) return { ...going, seconds: seconds / 2 };
  if (levelTimes / 2 >= limits.leastLevelTimes - 1e-9) return { ...going, levelTimes: levelTimes / 2 };
  return farther(going, stepTimes, limits);
};

const brighter = (going: Going, limits: GoingLimits): Going => {
  const { seconds, levelTimes } = going;
  if (!limits.staysOn && seconds * 2 <= limits.mostSeconds) return { ...going, seconds: seconds * 2 };
  if (levelTimes < 1) return { ...going, levelTimes: Math.min(1, levelTimes * 2) };
  return farther(going, 1 / stepTimes, limits);
};

/** One thing at a time: half as high, then an hour on, and so by turns; where one is at its end, the other. */
const lessFlat = (going: Going, limits: GoingLimits): Going => {
  const hoursMoved = Math.max(-12, Math.min(12, going.hoursMoved + hoursOn(limits.clockHours)));
  const heightTimes = loweredTimes(going, limits);
  const [moves, lowers] = [hoursMoved !== going.hoursMoved, heightTimes !== going.heightTimes];
  const timesLowered = Math.ceil(-Math.log2(going.heightTimes) - 1e-9);
  const isLowersTurn = timesLowered <= Math.ceil(Math.abs(going.hoursMoved) - 1e-9);
  if (lowers && (isLowersTurn || !moves)) return { ...going, heightTimes };
  return moves ? { ...going, hoursMoved } : going;
};

/**
 * The stop rules (common practice, no published source): too bright, halve the count or step back ×1.4; too dark, double it;
 * flat, lower the lamp by half, then move one hour round the clock, away from the camera, until the light comes from the side.
 * Where a count can’t be halved or doubled (too short to be spoken, past the shutter, a lamp that stays on) the lamp is turned
 * down instead as far as it goes, or up again; only then it goes farther or nearer, which is as many stops. Never a part of a step.
 *
 * @param going how it was gone
 * @returns how to go next; the same object where nothing is to change, or nothing is left to change
 */
export const afterVerdict = (going: Going, verdict: Verdict, limits: GoingLimits): Going => {
  if (verdict === 'too-bright') return darker(going, limits);
  if (verdict === 'too-dark') return brighter(going, limits);
  return verdict === 'flat' ? lessFlat(going, limits) : going;
};
