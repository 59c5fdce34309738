import { plainLine } from '../../../../core/setup/plain-text.ts';
import { cutTo, longestName } from './cut-to.ts';

/** A typed name as the document takes it: one line, at most 80 characters; "" where nothing is left. */
export const plainName = (text: string): string => plainLine(text, longestName);

/** A thing under another name; the same one where that is empty or no other. */
export const renamed = <T extends { readonly name: string }>(thing: T, typed: string): T => {
  const name = plainName(typed);
  return name === '' || name === thing.name ? thing : { ...thing, name };
};

/** Names are told apart by what is read, not by capitals or blanks at their ends. */
export const isSameName = (a: string, b: string): boolean => a.trim().toLowerCase() === b.trim().toLowerCase();

/** A name that is not taken yet: the wish itself, else "wish 2", "wish 3" … A number at its end is counted on. */
export const freshName = (taken: readonly string[], wish: string): string => {
  const isTaken = (name: string) => taken.some((each) => isSameName(each, name));
  if (!isTaken(wish)) return wish;
  const stem = cutTo(wish.replace(/ \d+$/, ''), longestName - 5);
  for (let n = 2; ; n++) if (!isTaken(`${stem} ${n}`)) return `${stem} ${n}`;
};
