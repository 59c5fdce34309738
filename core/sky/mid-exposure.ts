import type { SkyInput } from './sky-input.ts';

/** A sky's input at the middle of an exposure that starts at its instant: where what does not draw trails is taken. */
export const midExposure = (input: SkyInput, seconds: number): SkyInput => ({
  ...input,
  utcMilliseconds: input.utcMilliseconds + seconds * 500,
});
