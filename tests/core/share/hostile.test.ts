import { describe, expect, it } from 'vitest';
import { readSetup } from '../../../core/scan/read-setup.ts';
import { SetupError } from '../../../core/setup/setup-error.ts';
import { decodeLink } from '../../../core/share/decode-link.ts';
import { type Hostile, hostileOnes } from './hostile.ts';

/** What came of it: a setup, or why there is none. Anything else that is thrown gets through. */
const outcome = ({ way, text }: Hostile): string => {
  try {
    const setup = way === 'link' ? decodeLink(text) : readSetup(text);
    return Object.isFrozen(setup) ? 'setup' : 'not frozen';
  } catch (error) {
    if (error instanceof SetupError) return error.message;
    throw error;
  }
};

describe('2,000 hostile links and files', () => {
  const ones = hostileOnes(20261129);

  it('are 2,000, of many sorts, each half a link and half a file', () => {
    expect(ones).toHaveLength(2000);
    expect(ones.filter(({ way }) => way === 'link')).toHaveLength(1000);
    expect(new Set(ones.map(({ sort }) => sort)).size).toBeGreaterThanOrEqual(16);
  });

  it('each give a setup or a message of one line, and nothing else; no prototype is changed', () => {
    const before = Object.getOwnPropertyNames(Object.prototype).sort();
    const counts = { setups: 0, messages: 0 };
    ones.forEach((one, i) => {
      let came = '';
      try {
        came = outcome(one);
      } catch (error) {
        throw new Error(`${i}, ${one.sort}: ${error} (${one.text.slice(0, 200)})`, { cause: error });
      }
      if (came === 'setup') counts.setups++;
      else {
        counts.messages++;
        expect(came, one.sort).toMatch(/^\P{Cc}{5,200}$/u);
      }
    });
    expect(Object.getOwnPropertyNames(Object.prototype).sort()).toEqual(before);
    expect(({} as { polluted?: unknown }).polluted).toBeUndefined();
    // both happen, so that neither claim is empty
    expect(counts.setups).toBeGreaterThan(100);
    expect(counts.messages).toBeGreaterThan(1000);
  });

  it('come to a message where they are damaged on their way, whatever the damage', () => {
    const sorts = ['cut short', 'one letter changed', 'noise', 'a bomb', 'too long'];
    const damaged = ones.filter(({ sort }) => sorts.includes(sort));
    const opened = damaged.filter((one) => outcome(one) === 'setup');
    // a letter changed for itself, or in the last bits, which base64 does not use, is no damage
    expect(opened.every(({ sort }) => sort === 'one letter changed')).toBe(true);
    expect(opened.length).toBeLessThan(12);
  });
});
