import { readFileSync, writeFileSync } from 'node:fs';

const file = 'README.md';

/** Puts a text between two comments of the README, one pair for each kind of machine. */
export const putIntoReadme = (kind: 'software' | 'gpu', text: string): void => {
  const [start, end] = [`<!-- bench ${kind} -->`, `<!-- /bench ${kind} -->`];
  const readme = readFileSync(file, 'utf8');
  const [from, to] = [readme.indexOf(start), readme.indexOf(end)];
  if (from < 0 || to < from) throw new Error(`${file}: expected ${start} and, after it, ${end}`);
  writeFileSync(file, `${readme.slice(0, from + start.length)}\n${text}\n${readme.slice(to)}`);
};
