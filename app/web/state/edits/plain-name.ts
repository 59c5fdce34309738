import { plainLine } from '../../../../core/setup/plain-text.ts';
import { cutTo, longestName } from './cut-to.ts';

/** A typed name as the document takes it: one line, at most 80 characters; "" where nothing is left. */
export const plainName = (text: string): string => plainLine(text, longestName);

/** A thing under another name; the same one where that is empty or no other. */
export const renamed = <T extends { readonly name: string }>(thing: T, typed: string): T => {
  const name = plainName(typed);
  return name === '' || name === thing.name ? thing : { ...thing, name };
};

/** A name that is not taken yet: the wish itself, else "wish 2", "wish 3" … A number at its end is counted on. */
export const freshName = (taken: readonly string[], wish: string): string => {
  if (!taken.includes(wish)) return wish;
  const stem = cutTo(wish.replace(/ \d+$/, ''), longestName - 5);
  for (let n = 2; ; n++) if (!taken.includes(`${stem} ${n}`)) return `${stem} ${n}`;
};
