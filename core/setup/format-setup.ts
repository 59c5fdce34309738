import type { Setup } from './schema/setup.ts';

/** Short arrays of numbers on one line, the rest indented by two: a file that people can read and compare. */
export const formatSetup = (setup: Setup): string =>
  `${JSON.stringify(setup, null, 2).replace(/\[\n\s+(-?[\d.e+-]+(?:,\n\s+-?[\d.e+-]+){0,3})\n\s+\]/g, (_, numbers: string) => `[${numbers.replace(/\s*\n\s*/g, ' ')}]`)}\n`;
