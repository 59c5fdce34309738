import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';

const source = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** Rules that a page breaks: each with its weight and the first element that does. */
export const axeFaults = async (page: Page): Promise<{ impact: string; words: string }[]> => {
  // run by the test, not by the page, whose security policy stays as it is
  await page.evaluate(source);
  const { violations } = await page.evaluate(() =>
    (window as unknown as { axe: { run: () => Promise<AxeResults> } }).axe.run(),
  );
  return violations.map(({ id, impact, nodes }) => ({
    impact: impact ?? 'unknown',
    words: `${id}: ${nodes[0]?.html} (${nodes.length})`,
  }));
};
