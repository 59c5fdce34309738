import { ratioFromStops, stopsFromRatio } from '../units/stops.ts';

/** What the advice is worked out from. */
export interface TooBright {
  /** Over mid-grey, positive. */
  readonly stops: number;
  readonly countSeconds: number;
  readonly levelPercent: number;
  readonly lowestLevelPercent: number;
  /** How far from its target the lamp would do; null where that can't be told. */
  readonly standBackMetres: number | null;
}

const number = (value: number): string => String(Number(value.toPrecision(2)));

/**
 * What would bring a pass that burns down to mid-grey: a shorter count, a lower level where the lamp has one (else how far
 * its lowest still is), a step back, or ISO.
 */
export const tooBrightAdvice = (case_: TooBright): string => {
  const { stops, countSeconds, levelPercent, lowestLevelPercent, standBackMetres } = case_;
  const ratio = ratioFromStops(stops);
  const wantedLevel = levelPercent / ratio;
  const level =
    wantedLevel >= lowestLevelPercent
      ? `or turn the lamp down to ${number(wantedLevel)} %`
      : `(its lowest level, ${number(lowestLevelPercent)} %, is still ${stopsFromRatio(lowestLevelPercent / wantedLevel).toFixed(1)} stops too bright at this count)`;
  const back = standBackMetres === null ? '' : `, or step back to about ${number(standBackMetres)} m`;
  return `For mid-grey count ${number(countSeconds / ratio)} s instead of ${number(countSeconds)}, ${level}${back}, or lower the ISO by ${stops.toFixed(1)} stops.`;
};
