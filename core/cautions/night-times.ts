import { nightOf } from '../sky/night-of.ts';
import type { SkyInput } from '../sky/sky-input.ts';
import { localTimeOf } from '../sky/zoned-time.ts';

const minuteMilliseconds = 60_000;

/** "22:30" of an instant on the clocks of a zone, to the nearest minute. */
export const clockAt = (milliseconds: number, timeZone: string): string =>
  localTimeOf(Math.round(milliseconds / minuteMilliseconds) * minuteMilliseconds, timeZone)?.slice(11, 16) ?? '';

/** When the moon that is up sets, on the clocks of a zone; null where it stays up until the noon that ends the night. */
export const moonsetAfter = (input: SkyInput, timeZone: string): string | null => {
  const { moonUp, endMilliseconds } = nightOf(input);
  const span = moonUp.find((each) => each.endMilliseconds > input.utcMilliseconds);
  return span && span.endMilliseconds < endMilliseconds ? clockAt(span.endMilliseconds, timeZone) : null;
};
