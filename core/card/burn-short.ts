import type { Caution } from '../cautions/caution.ts';
import { ratioFromStops } from '../units/stops.ts';
import type { CardRow } from './card-row.ts';
import { levelText } from './card-words.ts';
import { leastSeconds } from './stop-rule-steps.ts';

/** Two figures, rounded down, so that it is dark enough. */
const under = (value: number): number => {
  const step = 10 ** (Math.floor(Math.log10(value) + 1e-9) - 1);
  return Number((Math.floor(value / step + 1e-9) * step).toPrecision(2));
};

/** What count, or level, takes so many stops off a pass; both where neither does alone. */
const waysOut = (stops: number, { staysOn, countSeconds, levelPercent, lowestLevelPercent }: CardRow): string => {
  const share = ratioFromStops(-stops);
  const [seconds, level] = [Math.floor(countSeconds * share + 1e-9), under(levelPercent * share)];
  const ways = [
    ...(!staysOn && seconds >= leastSeconds ? [`count ${seconds} s`] : []),
    ...(level >= lowestLevelPercent ? [`turn the lamp down to ${levelText(level)}`] : []),
  ];
  if (ways.length > 0) return ways.join(', or ');
  const both = under(levelPercent * share * (countSeconds / leastSeconds));
  if (!staysOn && countSeconds > leastSeconds && both >= lowestLevelPercent)
    return `count ${leastSeconds} s with the lamp at ${levelText(both)}`;
  return `take ${stops.toFixed(1)} stops off: step back, or more cloth`;
};

/**
 * "burns by 4.9 stops: turn the lamp down to 3 %": what would do for a part that burns, in the words of the card; null where
 * it is not known by how much.
 */
export const burnShort = (
  { value, limit, isTogether }: Pick<Caution, 'value' | 'limit' | 'isTogether'>,
  row: CardRow,
): string | null => {
  if (value === undefined || limit === undefined) return null;
  const stops = value - limit;
  const head = `burns by ${Math.max(0.1, stops).toFixed(1)} stops`;
  return isTogether
    ? `${head} with the frame’s other passes: ${(Math.ceil(ratioFromStops(stops) * 10 - 1e-6) / 10).toFixed(1)} times shorter counts, or split the frame`
    : `${head}: ${waysOut(stops, row)}`;
};
