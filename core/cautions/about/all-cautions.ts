import type { About } from '../../units/about.ts';
import { aboutFrameCautions } from './frames.ts';
import { aboutPassCautions } from './passes.ts';
import { aboutPeopleCautions } from './people.ts';
import { aboutSkyCautions } from './sky.ts';

/** What stands behind each caution, by its code. */
export const aboutCautions: Readonly<Record<string, About>> = {
  ...aboutPassCautions,
  ...aboutPeopleCautions,
  ...aboutFrameCautions,
  ...aboutSkyCautions,
};
