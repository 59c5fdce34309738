import { halfTurnRadians } from './angle.ts';

/**
 * Clock position round the subject, camera at six, as the trade says it (common practice, no published source).
 *
 * @param turnRadians how far the lamp stands round the subject from the camera, counter-clockwise seen from above:
 *   0 = beside the camera (six o'clock), +pi/2 = to the right as the camera sees it (three o'clock), pi = behind.
 * @returns hours in [0, 12): 6 = camera, 3 = right, 9 = left, 0 = behind.
 */
export const clockHoursFromTurn = (turnRadians: number): number => {
  const hours = 6 - (turnRadians * 6) / Math.PI;
  return ((hours % 12) + 12) % 12;
};

/** The turn of `clockHoursFromTurn`, in radians in (-pi, pi], from hours. */
export const turnFromClockHours = (hours: number): number => {
  const turn = ((6 - hours) * Math.PI) / 6;
  return halfTurnRadians(turn);
};

/** "2:30" from 2.5 hours, rounded to five minutes (2.5 degrees); noon is "12:00". */
export const clockText = (hours: number): string => {
  const steps = Math.round(hours * 12) % 144;
  const hour = Math.floor(steps / 12) || 12;
  return `${hour}:${String((steps % 12) * 5).padStart(2, '0')}`;
};
