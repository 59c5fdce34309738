import { clockAt, toMinute } from '../../../core/sky/clock-at.ts';
import type { CoreStand } from '../../../core/sky/core-over.ts';
import { degreesFromRadians } from '../../../core/units/angle.ts';
import { dateWords } from './clock-time.ts';

/** "Fri 12 Jun 2026 · 23:10 to 00:45 · 8° to 11° up · moon down". */
export const standWords = ({ start, end, moonAltitudeRadians, moonLitShare }: CoreStand, timeZone: string): string => {
  const day = toMinute(start.utcMilliseconds, timeZone);
  const degrees = [start, end].map(({ altitudeRadians }) => Math.round(degreesFromRadians(altitudeRadians)));
  const [low, high] = [Math.min(...degrees), Math.max(...degrees)];
  return [
    day ? dateWords(day) : '',
    `${clockAt(start.utcMilliseconds, timeZone)} to ${clockAt(end.utcMilliseconds, timeZone)}`,
    low === high ? `${low}° up` : `${low}° to ${high}° up`,
    moonAltitudeRadians > 0 ? `moon up, ${Math.round(100 * moonLitShare)} % lit` : 'moon down',
  ].join(' · ');
};
