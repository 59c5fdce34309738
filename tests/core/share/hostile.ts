import { readFileSync } from 'node:fs';
import { deflateSync } from 'fflate';
import { seededRandom } from '../../../core/geometry/random.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import { encodeLink } from '../../../core/share/encode-link.ts';
import { adler32, encodeBase64Url, linkStart } from '../../../core/share/link-text.ts';
import { hostileTexts } from './hostile-texts.ts';

/** A link or a file that somebody wrote to do harm, or that was harmed on its way. */
export interface Hostile {
  readonly sort: string;
  readonly way: 'link' | 'file';
  readonly text: string;
}

/** Any text as a link with a right sum: what only somebody who knows the format can make. */
export const forgedLink = (text: string): string => {
  const bytes = new TextEncoder().encode(text);
  const packed = deflateSync(bytes, { level: 9 });
  const all = new Uint8Array(4 + packed.length);
  all.set(adler32(bytes));
  all.set(packed, 4);
  return linkStart + encodeBase64Url(all);
};

/** Little that unpacks to very much: so many megabytes of one letter. */
const bomb = (megabytes: number, letter: string): string => forgedLink(letter.repeat(megabytes * 1_000_000));

const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
const strange = [...'%<>"\'&#;=+/ \\', '\u202e', '\ud800', '\0', 'é', '💡'];

/** 1,000 hostile links and 1,000 hostile files, always the same for a seed. */
export const hostileOnes = (seed: number): Hostile[] => {
  const random = seededRandom(seed);
  const upTo = (n: number) => Math.floor(random() * n);
  const samples = ['three-stones', 'lesson-high-and-low', 'lone-tree'].map((name) =>
    readFileSync(`assets/setups/${name}.json`, 'utf8'),
  );
  const links = samples.map((text) => encodeLink(parseSetup(text)).fragment as string);
  const one = <T>(list: readonly T[]): T => list[upTo(list.length)] as T;
  const bombs = [3, 8, 20].flatMap((size) => ['0', ' ', '['].map((letter) => bomb(size, letter)));
  const makers: readonly (readonly [sort: string, count: number, make: () => string])[] = [
    ['cut short', 130, () => one(links).slice(0, upTo(1000))],
    [
      'one letter changed',
      130,
      () => {
        const link = one(links);
        const at = linkStart.length + upTo(link.length - linkStart.length);
        return link.slice(0, at) + one([...letters]) + link.slice(at + 1);
      },
    ],
    ['a strange letter', 60, () => one(links).replace(/.$/u, one(strange))],
    ['noise', 60, () => linkStart + Array.from({ length: upTo(3000) }, () => one([...letters])).join('')],
    ['another version', 40, () => one(links).replace('setup=a', `setup=${one([...letters])}`)],
    ['a bomb', 18, () => one(bombs)],
    ['too long', 6, () => linkStart + 'A'.repeat(40_000 + upTo(2_000_000))],
  ];
  const torn = makers.flatMap(([sort, count, make]) =>
    Array.from({ length: count }, (): Hostile => ({ sort, way: 'link', text: make() })),
  );
  const forged = (count: number, way: Hostile['way'], write: (text: string) => string) =>
    Array.from({ length: count }, (): Hostile => {
      const { sort, text } = hostileTexts(one(samples), random);
      return { sort, way, text: write(text) };
    });
  return [...torn, ...forged(1000 - torn.length, 'link', forgedLink), ...forged(1000, 'file', (text) => text)];
};
