import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { aboutCautions } from '../../../core/cautions/about/all-cautions.ts';
import { limits } from '../../../core/cautions/limits.ts';

const folder = 'core/cautions';

/** Sources of the rules: the codes that each tells, and the limits that it holds them to. */
const rules = readdirSync(folder)
  .filter((name) => name.endsWith('.ts') && name !== 'limits.ts')
  .map((name) => ({ name, text: readFileSync(`${folder}/${name}`, 'utf8') }))
  .map(({ name: file, text }) => ({
    file,
    codes: [...text.matchAll(/\bcode: '([a-z-]+)'/g)].map(([, code]) => code as string),
    limits: [
      ...[...text.matchAll(/\blimits\.(\w+)(?:\.(\w+))?/g)].map(([, name = '', part = '']) => ({ name, part })),
      ...[...text.matchAll(/\{([^{}]+)\} = limits;/g)].flatMap(([, names = '']) =>
        names.split(',').map((name) => ({ name: (name.split(':')[0] as string).trim(), part: '' })),
      ),
    ].flatMap(({ name, part }) => (name in limits ? [{ name: name as keyof typeof limits, part }] : [])),
  }));
const codes = new Set(rules.flatMap((rule) => rule.codes));

/** A limit of several numbers is meant as a whole where no one of them is named. */
const numbersOf = ({ name, part }: { name: keyof typeof limits; part: string }): number[] => {
  const limit: number | Readonly<Record<string, number>> = limits[name];
  if (typeof limit === 'number') return [limit];
  const one = limit[part];
  return one === undefined ? Object.values(limit) : [one];
};

/** Every number of a text: "5,600" is one, and so is "0.5" in "0.5 %", which counts as 0.005 too. */
const numbersIn = (text: string): number[] =>
  [...text.matchAll(/(\d[\d,]*(?:\.\d+)?)( ?%)?/g)].flatMap(([, digits = '', percent]) => {
    const value = Number(digits.replaceAll(',', ''));
    return percent ? [value / 100] : [value];
  });

/** Whether a text has a number, as rounded as "3.0" is for log2(78 ÷ 10), 2.963. */
const tells = (text: string, value: number): boolean =>
  numbersIn(text).some((told) => Math.abs(told - Math.abs(value)) <= 0.015 * Math.abs(value));

describe('what stands behind a caution', () => {
  it('is there for every code that a rule tells, and for no other', () => {
    expect(codes.size).toBeGreaterThan(30);
    expect(Object.keys(aboutCautions).sort()).toEqual([...codes].sort());
  });
  it('has a name, a sentence, a rule and a source', () => {
    for (const [code, { name, says, rule, source }] of Object.entries(aboutCautions)) {
      for (const text of [says, rule, source]) expect(text, code).toMatch(/^\S.{4,}\.$/);
      expect(name, code).toMatch(/^[A-Z].{2,}$/);
      expect(source, code).not.toContain('undefined');
      expect(rule, code).not.toMatch(/undefined|NaN/);
    }
  });
  it('does not take a nought, or a number beside it, for a small limit', () => {
    expect(tells('over 0 of it', 0.03)).toBe(false);
    expect(tells('over 0.01 to 0.03 lx', 0.03)).toBe(true);
    expect(tells('over 0.5 % of it', limits.burntShare.subject)).toBe(true);
    expect(tells('over 0.5 of it', limits.burntShare.subject)).toBe(false);
  });
  it('names every limit that the rule holds to, as limits.ts has it', () => {
    const missing = rules.flatMap((rule) =>
      rule.limits.flatMap((limit) => {
        const told = rule.codes.map((code) => aboutCautions[code]?.rule ?? '').join(' ');
        return numbersOf(limit)
          .filter((value) => !tells(told, value))
          .map((value) => `${rule.file}: ${limit.name} ${value}`);
      }),
    );
    expect(rules.flatMap((rule) => rule.limits).length).toBeGreaterThan(40);
    expect(missing).toEqual([]);
  });
});
