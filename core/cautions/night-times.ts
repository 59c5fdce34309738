import { clockAt } from '../sky/clock-at.ts';
import { nightOf } from '../sky/night-of.ts';
import type { SkyInput } from '../sky/sky-input.ts';

/** When the moon that is up sets, on the clocks of a zone; null where it stays up until the noon that ends the night. */
export const moonsetAfter = (input: SkyInput, timeZone: string): string | null => {
  const { moonUp, endMilliseconds } = nightOf(input);
  const span = moonUp.find((each) => each.endMilliseconds > input.utcMilliseconds);
  return span && span.endMilliseconds < endMilliseconds ? clockAt(span.endMilliseconds, timeZone) : null;
};
