import { limits } from '../../../core/cautions/limits.ts';
import { lengthWords } from './lengths.ts';

/** Plain sense of a number of stops from mid-grey (common practice, no published source). */
export const senseOfStops = (stops: number): string => {
  if (stops < limits.tooDarkStops) return 'lost in the night';
  if (stops < -2.5) return 'very dark';
  if (stops < -0.5) return 'dim, as at night';
  if (stops < 0.5) return 'mid-grey, as by day';
  if (stops < 2) return 'bright';
  return stops < limits.burntStops ? 'very bright' : 'burnt';
};

/** "+1.7", "−0.4": a true minus sign, so that columns line up. */
export const signed = (value: number, digits = 1): string => {
  const text = Math.abs(value).toFixed(digits);
  return Number(text) === 0 ? text : `${value < 0 ? '−' : '+'}${text}`;
};

/** Three figures at most, without a tail of noughts or an exponent. */
export const threeFigures = (value: number): string => {
  if (value === 0) return '0';
  const digits = Math.min(Math.max(2 - Math.floor(Math.log10(Math.abs(value))), 0), 6);
  return String(Number(value.toFixed(digits)));
};

/** A time as a camera or a counting voice says it: "8", "2.5", "1/60". */
export const shutterText = (seconds: number): string =>
  seconds < 0.3 ? `1/${Math.round(1 / seconds)}` : String(Number(seconds.toFixed(2)));

/** A length for the eye: "0.35 m", "4.8 m", "20 m"; "infinity" for null. */
export const metresText = (metres: number | null): string => {
  if (metres === null) return 'infinity';
  return lengthWords(metres, metres < 1 ? 2 : metres < 10 ? 1 : 0);
};

/** A share of 0 to 1: "3 %", "0.4 %", "under 0.1 %". */
export const percentText = (share: number): string => {
  const percent = 100 * share;
  if (percent > 0 && percent < 0.05) return 'under 0.1 %';
  return `${percent < 1 ? Number(percent.toFixed(1)) : Math.round(percent)} %`;
};
