import { ratioFromStops, stopsFromRatio } from '../units/stops.ts';

/** What a pass gives its target now. */
export interface PassLight {
  /** How long it shines; a stroke that is walked or swept counts whole. */
  readonly seconds: number;
  readonly levelPercent: number;
  readonly iso: number;
  /** The target's level, from mid-grey. */
  readonly stops: number;
}

/** How many times as much light is wanted: 2^(wanted - now). Dose is light x time, so each answer below is this ratio. */
const ratioWanted = ({ stops }: PassLight, wantedStops: number): number => ratioFromStops(wantedStops - stops);

/** The same pass with its lamp at another level. */
export const atLevel = (pass: PassLight, levelPercent: number): PassLight => ({
  ...pass,
  levelPercent,
  stops: pass.stops + stopsFromRatio(levelPercent / pass.levelPercent),
});

/** Seconds that bring the target to a level with all else as it is. Reciprocity holds: a sensor adds up light. */
export const secondsForLevel = (pass: PassLight, wantedStops: number): number =>
  pass.seconds * ratioWanted(pass, wantedStops);

/** Level of the lamp in percent that brings the target there in a given count; may be past what the lamp can do. */
export const levelForCount = (pass: PassLight, wantedStops: number, seconds: number): number =>
  (pass.levelPercent * secondsForLevel(pass, wantedStops)) / seconds;

/** ISO speed that brings the target there in a given count at the present level. */
export const isoForCount = (pass: PassLight, wantedStops: number, seconds: number): number =>
  (pass.iso * secondsForLevel(pass, wantedStops)) / seconds;

/** The target's level after a given count. */
export const stopsAfterCount = (pass: PassLight, seconds: number): number =>
  pass.stops + stopsFromRatio(seconds / pass.seconds);

/** Counts as they are spoken in the dark: every second up to ten, then round ones. Common practice, no published source. */
const spokenCounts = [
  1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 15, 20, 25, 30, 40, 50, 60, 80, 100, 120, 150, 180, 240, 300, 400, 480, 600, 900,
] as const;

/** The spoken count nearest to a time, in stops, that the frame still holds; null when it holds none. */
export const spokenCount = (seconds: number, frameSeconds: number): number | null => {
  const away = (count: number) => Math.abs(stopsFromRatio(count / seconds));
  return spokenCounts
    .filter((count) => count <= frameSeconds)
    .reduce<number | null>((best, count) => (best === null || away(count) < away(best) ? count : best), null);
};

/** Counts that are said without thinking, about two thirds of a stop apart. Common practice, no published source. */
const easyCounts = [1, 2, 3, 5, 8, 10, 15, 20, 30, 40, 60, 80, 120, 180, 240, 480, 900] as const;
/** What is told lies so near to what is wanted, stops. */
const ladderStops = 1.1;

/** A count, and the target's level after it. */
export interface CountStep {
  readonly seconds: number;
  readonly stops: number;
}

/** Easy counts round the wanted level that the frame holds, shortest first, each with the level that it gives. */
export const countLadder = (pass: PassLight, wantedStops: number, frameSeconds: number): CountStep[] =>
  easyCounts.flatMap((seconds) => {
    const stops = stopsAfterCount(pass, seconds);
    return seconds <= frameSeconds && Math.abs(stops - wantedStops) <= ladderStops ? [{ seconds, stops }] : [];
  });

/**
 * Paint budget: light that an area needs to come to a dose, in lumen-seconds; over the lumens that land on it, the time of
 * a sweep, whatever the distance. Common practice; first principles (lumen = lux x square metre).
 */
export const paintBudgetLumenSeconds = (doseLuxSeconds: number, areaSquareMetres: number): number =>
  doseLuxSeconds * areaSquareMetres;
