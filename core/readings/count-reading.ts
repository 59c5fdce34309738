import type { SurfacePoint } from '../trace/surface-point.ts';
import { ratioFromStops, stopsFromRatio } from '../units/stops.ts';
import type { Stage } from '../world/stage.ts';
import type { LampPlace, WorldLight } from '../world/world.ts';
import {
  atLevel,
  isoForCount,
  levelForCount,
  type PassLight,
  secondsForLevel,
  spokenCount,
  stopsAfterCount,
} from './count.ts';
import { type CountAdvice, tooBrightAtLowest, tooDarkAtFull } from './count-advice.ts';
import type { LampSource } from './seen-body.ts';
import { distanceForLight, levelDistance } from './stand-back.ts';
import type { TargetReading } from './target-reading.ts';

/** How long to count, and what to do when no count will do. */
export interface CountReading {
  /** That brings the target to the wanted level with the lamp as it is; null when none of its light gets there. */
  readonly seconds: number | null;
  /** Nearest count that one can speak within the frame; null where the time is shorter than any, or longer than the frame. */
  readonly spoken: number | null;
  /** The target's level after the spoken count, from mid-grey. */
  readonly spokenStops: number | null;
  /** Whether some level that the lamp has, and a count between the shortest and the shutter's time, gets there. */
  readonly reachable: boolean;
  /** Out of reach by so many stops: positive too bright at the lowest level, negative too dark at full; null within reach. */
  readonly missStops: number | null;
  /** Level that is wanted, from mid-grey. */
  readonly wantedStops: number;
  /** What to do, in plain words, best first; empty when the count is all that is needed. */
  readonly advice: readonly string[];
}

/** What the count is worked out for. */
export interface CountCase {
  readonly stage: Stage;
  readonly light: WorldLight;
  readonly surface: SurfacePoint | null;
  readonly target: TargetReading | null;
  /** Where the lamp is half-way through. */
  readonly moment: LampPlace;
  readonly levelPercent: number;
  readonly lowestLevelPercent: number;
  /** Whether the lamp stands lit for the whole frame, so that only its level can change. */
  readonly staysLit: boolean;
  readonly frameSeconds: number;
  readonly iso: number;
  readonly wantedStops: number;
}

/** Shortest count that a hand keeps: common practice, no published source. */
const shortestCountSeconds = 1;
/** A difference that nobody sees in a picture, stops; our choice. */
const unseenStops = 0.05;
/** A count that is easy to keep, for which a lower level is proposed. */
const easyCountSeconds = 3;

const figures = (value: number): string => String(Number(value.toPrecision(2)));

/** What counts as right, as a ratio of light: for a lamp that stays lit within one marking of the ISO; else within what nobody sees. */
const slackOf = ({ staysLit }: CountCase): number => ratioFromStops(staysLit ? 1 / 3 : unseenStops) * (1 + 1e-6);

/** Reads the count of a pass. */
export const countReading = (case_: CountCase): CountReading => {
  const { light, surface, target, frameSeconds, wantedStops, staysLit } = case_;
  const stops = target?.stops ?? null;
  if (stops === null || !surface || light.source.kind !== 'lamp')
    return {
      seconds: null,
      spoken: null,
      spokenStops: null,
      reachable: false,
      missStops: null,
      wantedStops,
      advice: [],
    };
  const pass: PassLight = { seconds: light.seconds, levelPercent: case_.levelPercent, iso: case_.iso, stops };
  const seconds = secondsForLevel(pass, wantedStops);
  const shortest = staysLit ? frameSeconds : Math.min(shortestCountSeconds, frameSeconds);
  const base = { seconds, wantedStops };
  const slack = slackOf(case_);
  if (seconds >= shortest / slack && seconds <= frameSeconds * slack) {
    const spoken = staysLit ? null : spokenCount(seconds, frameSeconds);
    const spokenStops = spoken === null ? null : stopsAfterCount(pass, spoken);
    return { ...base, spoken, spokenStops, reachable: true, missStops: null, advice: [] };
  }
  const outOfCount = { ...base, spoken: null, spokenStops: null };
  return { ...outOfCount, ...(seconds < shortest ? tooBright(case_, pass, shortest) : tooDark(case_, pass)) };
};

/** Of a case with a lamp and a surface, as all are that come so far. */
const farther = ({ stage, light, surface, moment }: CountCase, ratio: number): number | null =>
  distanceForLight(stage, light.source as LampSource, surface as SurfacePoint, moment, ratio);

/** Even the shortest count is too long at the present level. */
const tooBright = (case_: CountCase, pass: PassLight, shortest: number): CountAdvice => {
  const { lowestLevelPercent, wantedStops, staysLit, frameSeconds } = case_;
  const easy = staysLit ? frameSeconds : Math.max(Math.min(easyCountSeconds, frameSeconds), shortest);
  const level = (seconds: number) => levelForCount(pass, wantedStops, seconds);
  const count = [easy, shortest].find((seconds) => level(seconds) * slackOf(case_) >= lowestLevelPercent);
  if (count !== undefined) {
    const what = `Turn the lamp down to ${figures(Math.max(level(count), lowestLevelPercent))} %`;
    return {
      reachable: true,
      missStops: null,
      advice: [staysLit ? `${what}.` : `${what} and count ${figures(count)}.`],
    };
  }
  const stops = stopsFromRatio(lowestLevelPercent / level(shortest));
  return tooBrightAtLowest({
    stops,
    lowestLevelPercent,
    shortestSeconds: shortest,
    staysLit,
    distanceMetres: levelDistance(case_.moment),
    // from where it stands now, at its lowest level, for the shortest count
    standBackMetres: farther(case_, ratioFromStops(-stops)),
    iso: isoForCount(atLevel(pass, lowestLevelPercent), wantedStops, shortest),
  });
};

/** Even the whole shutter is too short at the present level. */
const tooDark = (case_: CountCase, pass: PassLight): CountAdvice => {
  const { wantedStops, frameSeconds } = case_;
  const level = levelForCount(pass, wantedStops, frameSeconds);
  const atFull = `Turn the lamp up to ${figures(level)} % and leave it on for the whole frame.`;
  if (level <= 100) return { reachable: true, missStops: null, advice: [atFull] };
  return tooDarkAtFull({
    stops: stopsFromRatio(level / 100),
    frameSeconds,
    neededSeconds: (frameSeconds * level) / 100,
    comeToMetres: farther(case_, level / 100),
    iso: isoForCount(atLevel(pass, 100), wantedStops, frameSeconds),
  });
};
