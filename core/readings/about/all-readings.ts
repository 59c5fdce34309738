import { aboutFrame } from './frame.ts';
import { aboutPassLight } from './pass-light.ts';
import { aboutPassPlace } from './pass-place.ts';
import { aboutPassShape } from './pass-shape.ts';
import { aboutSky } from './sky.ts';

/** What stands behind each reading that is shown. */
export const aboutReadings = {
  ...aboutPassLight,
  ...aboutPassPlace,
  ...aboutPassShape,
  ...aboutFrame,
  ...aboutSky,
} as const;

export type ReadingName = keyof typeof aboutReadings;
