import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { setWalking } from '../../../app/web/state/edits/walking-edits.ts';
import { reportScheme } from '../../../core/cautions/setup-report.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Scheme, Setup } from '../../../core/setup/schema/setup.ts';

const tree = parseSetup(readFileSync('assets/setups/lone-tree.json', 'utf8'));
const timings = (setup: Setup) => {
  const scheme = setup.schemes.find(({ id }) => id === 'long') as Scheme;
  return reportScheme(setup, scheme).frames.flatMap(({ passes }) => passes.map(({ timing }) => timing));
};

describe('how one walks', () => {
  it('is changed in what is said and nothing else; what is so already leaves the same setup', () => {
    const slow = setWalking(tree, { metresPerSecond: 0.5 });
    expect(slow).toEqual({ ...tree, walking: { ...tree.walking, metresPerSecond: 0.5 } });
    expect(setWalking(slow, { metresPerSecond: 0.5, clothes: slow.walking.clothes })).toBe(slow);
  });

  it('half as fast takes twice as long, and that much is missing (1e-9)', () => {
    const [, fast] = timings(setWalking(tree, { metresPerSecond: 1 }));
    const [, slow] = timings(setWalking(tree, { metresPerSecond: 0.5 }));
    expect((slow?.walkSeconds ?? 0) / (fast?.walkSeconds ?? 1)).toBeCloseTo(2, 9);
    expect((fast?.slackSeconds ?? 0) - (slow?.slackSeconds ?? 0)).toBeCloseTo(fast?.walkSeconds ?? 0, 9);
  });
});
