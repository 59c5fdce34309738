import type { Frame } from '../../../core/setup/schema/setup.ts';
import { ratioFromStops } from '../../../core/units/stops.ts';

/** A count that makes up for a lamp that is not as it was taken for. */
export interface CountChange {
  readonly passId: string;
  readonly from: number;
  readonly to: number;
}

/** To the tenth of a second, hundredths under one: nobody counts finer. */
const counted = (seconds: number): number => Number(seconds.toFixed(seconds < 1 ? 2 : 1));

/**
 * What a lamp's counts in a frame become when it gives so many stops more than it was taken for; null where one of them
 * stays lit as long as the frame, would outlast it, or would be over at once.
 */
export const countChanges = (frame: Frame, lampId: string, stops: number): readonly CountChange[] | null => {
  const passes = frame.passes.filter((pass) => pass.lampId === lampId);
  const changes = passes.map(({ id, on, off }) => {
    const from = counted(off - on);
    return { passId: id, from, to: counted((off - on) * ratioFromStops(-stops)) };
  });
  const staysLit = passes.some(({ on, off }) => on === 0 && off >= frame.seconds);
  const fits = changes.every(({ to }) => to >= 0.05 && to <= frame.seconds);
  return staysLit || !fits || changes.length === 0 ? null : changes;
};
