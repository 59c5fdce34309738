import type { Span } from '../../../core/sky/night-spans.ts';
import { localTimeOf } from '../../../core/sky/zoned-time.ts';

/** From noon to noon along a line of pixels. */
export interface NightScale {
  readonly span: Span;
  readonly left: number;
  readonly width: number;
}

export const xOf = ({ span, left, width }: NightScale, milliseconds: number): number =>
  left + ((milliseconds - span.startMilliseconds) / (span.endMilliseconds - span.startMilliseconds)) * width;

export const atX = ({ span, left, width }: NightScale, x: number): number =>
  span.startMilliseconds +
  (Math.min(Math.max(x - left, 0), width) / width) * (span.endMilliseconds - span.startMilliseconds);

/** Whole hours of the clock on the scale, every `step` of them, as the clocks of the place show them. */
export const hourTicks = (
  { span }: NightScale,
  timeZone: string,
  step: number,
): { readonly at: number; readonly hour: number }[] => {
  const quarter = 900_000;
  const ticks: { at: number; hour: number }[] = [];
  // by the quarter: some clocks are off by half an hour, and are put back in the night
  for (let at = Math.ceil(span.startMilliseconds / quarter) * quarter; at <= span.endMilliseconds; at += quarter) {
    const local = localTimeOf(at, timeZone);
    if (!local?.endsWith(':00')) continue;
    const hour = Number(local.slice(11, 13));
    if (hour % step === 0) ticks.push({ at, hour });
  }
  return ticks;
};

/** Where the rows of the drawing stand, pixels: their upper edges, the drawing's end, and the room left for their names. */
export const nightLayout = { left: 44, hours: 14, light: 18, moon: 42, core: 60, end: 78 } as const;
