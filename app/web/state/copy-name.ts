import { cutTo, longestName } from './edits/cut-to.ts';
import { freshName } from './edits/plain-name.ts';

const ending = ', second copy';

/** What a setup is called that two tabs changed, where it is kept beside the other: a name that is not taken yet. */
export const copyName = (taken: readonly string[], name: string): string => {
  const stem = name.replace(/, second copy( \d+)?$/, '');
  return freshName(taken, `${cutTo(stem, longestName - ending.length)}${ending}`);
};
