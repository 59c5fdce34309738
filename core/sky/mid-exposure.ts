import type { SkyInput } from './sky-input.ts';

/** A sky's input so many seconds later. */
export const inputAfter = (input: SkyInput, seconds: number): SkyInput => ({
  ...input,
  utcMilliseconds: input.utcMilliseconds + seconds * 1000,
});

/** A sky's input at the middle of an exposure that starts at its instant: where all is taken that draws no trails. */
export const midExposure = (input: SkyInput, seconds: number): SkyInput => inputAfter(input, seconds / 2);
