import type { Lm63Reader } from './lm63-reader.ts';

const readAscending = (reader: Lm63Reader, count: number, name: string, starts: readonly number[]): number[] => {
  const first = `the first ${name}, ${starts.join(' or ')} degrees`;
  const angles = [reader.number(first, (angle) => starts.includes(angle))];
  while (angles.length < count) {
    const before = angles.at(-1) as number;
    angles.push(reader.number(`a ${name} above the one before, ${before}`, (angle) => angle > before));
  }
  return angles;
};

/**
 * Reads the vertical angles: ascending, from 0 to at most 180 or from 90 to 180. LM-63 lets a range from 0 end at 90 or
 * 180 only; files of spots often stop earlier, and beyond their last angle all is dark.
 */
export const readVerticalAngles = (reader: Lm63Reader, count: number): number[] => {
  const angles = readAscending(reader, count, 'vertical angle', [0, 90]);
  const last = angles.at(-1) as number;
  if (angles[0] === 90 && last !== 180)
    throw reader.fault(`must end at 180, as vertical angles from 90 do, not ${last}`);
  if (last > 180) throw reader.fault(`must end at 180 or before, as vertical angles do, not ${last}`);
  return angles;
};

/**
 * Reads the horizontal angles: a single 0, or ascending from 0 to 90, 180 or beyond 180 up to 360, or from 90 to 270.
 * Files that go round but leave out the 360 that repeats 0 stop between 180 and 360.
 */
export const readHorizontalAngles = (reader: Lm63Reader, count: number): number[] => {
  const angles = readAscending(reader, count, 'horizontal angle', count === 1 ? [0] : [0, 90]);
  const last = angles.at(-1) as number;
  const isGood = angles[0] === 90 ? last === 270 : last <= 360 && (count === 1 || last === 90 || last >= 180);
  if (isGood) return angles;
  throw reader.fault(
    angles[0] === 90
      ? `must end at 270, as horizontal angles from 90 do, not ${last}`
      : `must end at 90, 180 or between 180 and 360, as horizontal angles from 0 do, not ${last}`,
  );
};
